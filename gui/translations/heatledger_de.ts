<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Answer</name>
    <message>
        <source>Strike</source>
        <translation>Einmaischwasser</translation>
    </message>
    <message>
        <source>Mash in</source>
        <translation>Einmaischen</translation>
    </message>
    <message>
        <source>Ramp</source>
        <translation>Aufheizen</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Rast</translation>
    </message>
    <message>
        <source>Unplugged</source>
        <translation>Ohne Strom</translation>
    </message>
    <message>
        <source>To boil</source>
        <translation>Bis zum Kochen</translation>
    </message>
    <message>
        <source>Boil</source>
        <translation>Kochen</translation>
    </message>
    <message>
        <source>%1 is where %2 levels off, short of the strike temperature: at %3 it would lose %4 and gets %5.</source>
        <translation>Bei %1 bleibt %2 stehen, unter der Einmaischtemperatur: Bei %3 gingen %4 verloren und %5 kommen an.</translation>
    </message>
    <message>
        <source>%1 is where %2 levels off, short of the next rest: at %3 it would lose %4 and gets %5.</source>
        <translation>Bei %1 bleibt %2 stehen, unter der nächsten Rast: Bei %3 gingen %4 verloren und %5 kommen an.</translation>
    </message>
    <message>
        <source>%1 is left in %2 when its element is uncovered: the day stops.</source>
        <translation>%1 sind in %2 noch übrig, wenn das Heizelement freiliegt: Der Tag endet hier.</translation>
    </message>
    <message>
        <source>%1 would be needed to strike with %2: the water would have to boil. Use more water, less grain, or warmer grain.</source>
        <translation>%1 wären zum Einmaischen mit %2 nötig: Das Wasser müsste kochen. Nehmen Sie mehr Wasser, weniger Malz oder wärmeres Malz.</translation>
    </message>
    <message>
        <source>%1 does not finish its day.</source>
        <translation>%1 bringt den Tag nicht zu Ende.</translation>
    </message>
    <message>
        <source>boils</source>
        <translation>kocht</translation>
    </message>
    <message>
        <source>no strike</source>
        <translation>kein Einmaischen</translation>
    </message>
    <message>
        <source>no rest</source>
        <translation>keine Rast</translation>
    </message>
    <message>
        <source>no boil</source>
        <translation>kocht nicht</translation>
    </message>
    <message>
        <source>runs dry</source>
        <translation>läuft trocken</translation>
    </message>
    <message>
        <source>too hot</source>
        <translation>zu heiß</translation>
    </message>
    <message>
        <source>simmer</source>
        <translation>simmert</translation>
    </message>
    <message>
        <source>gentle</source>
        <translation>sanft</translation>
    </message>
    <message>
        <source>steady</source>
        <translation>stetig</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>kräftig</translation>
    </message>
    <message>
        <source>fierce</source>
        <translation>heftig</translation>
    </message>
    <message>
        <source>Mains current kills. These figures are for planning only; rules differ from place to place. Have a licensed electrician check circuit, plug, cable and enclosure.</source>
        <translation>Netzstrom tötet. Diese Zahlen dienen nur der Planung; Vorschriften sind von Ort zu Ort verschieden. Lassen Sie Stromkreis, Stecker, Kabel und Gehäuse von einer Elektrofachkraft prüfen.</translation>
    </message>
    <message>
        <source>Use ground-fault protection (GFCI, RCD) and a sound earth; test it before each use. If it trips, stop and find out why.</source>
        <translation>Verwenden Sie einen Fehlerstromschutz (FI, RCD) und einen guten Schutzleiter; prüfen Sie ihn vor jedem Gebrauch. Löst er aus, hören Sie auf und suchen Sie den Grund.</translation>
    </message>
    <message>
        <source>Keep the element covered with liquid whenever it is on; dry, it burns out in seconds.</source>
        <translation>Das Heizelement muss immer mit Flüssigkeit bedeckt sein, solange es eingeschaltet ist; trocken brennt es in Sekunden durch.</translation>
    </message>
    <message>
        <source>Never close, clamp or block a vessel that is being heated, and never shut the lid on a boil.</source>
        <translation>Ein Gefäß, das beheizt wird, nie verschließen, verspannen oder verstopfen, und beim Kochen nie den Deckel schließen.</translation>
    </message>
    <message>
        <source>Stay with the kettle: foam rises fast when the boil begins.</source>
        <translation>Bleiben Sie beim Kessel: Schaum steigt schnell, wenn das Kochen beginnt.</translation>
    </message>
    <message>
        <source>Hot wort and steam burn skin in a second. Keep children and pets away.</source>
        <translation>Heiße Würze und Dampf verbrühen in einer Sekunde. Halten Sie Kinder und Haustiere fern.</translation>
    </message>
    <message>
        <source>Wort left below about %1 for hours can sour and grow bacteria. Boil it promptly afterwards, or do not leave it that long.</source>
        <translation>Würze, die stundenlang unter etwa %1 steht, kann sauer werden und Bakterien wachsen lassen. Kochen Sie sie danach sofort, oder lassen Sie sie nicht so lange stehen.</translation>
    </message>
    <message>
        <source>How long does it take?</source>
        <translation>Wie lange dauert es?</translation>
    </message>
    <message>
        <source>Where does the heat go?</source>
        <translation>Wohin geht die Wärme?</translation>
    </message>
    <message>
        <source>Does it boil hard enough?</source>
        <translation>Kocht es kräftig genug?</translation>
    </message>
    <message>
        <source>Is insulation worth it?</source>
        <translation>Lohnt sich Dämmung?</translation>
    </message>
    <message>
        <source>What element do I need?</source>
        <translation>Welches Heizelement brauche ich?</translation>
    </message>
    <message>
        <source>What does it cost?</source>
        <translation>Was kostet es?</translation>
    </message>
    <message>
        <source>How far does it cool?</source>
        <translation>Wie weit kühlt es ab?</translation>
    </message>
    <message>
        <source>%1 boils off with %2, a simmer: %3.</source>
        <translation>%1 verdampfen mit %2, es simmert: %3.</translation>
    </message>
    <message>
        <source>%1 boils off with %2, a gentle boil: %3.</source>
        <translation>%1 verdampfen mit %2, ein sanftes Kochen: %3.</translation>
    </message>
    <message>
        <source>%1 boils off with %2, a steady boil: %3.</source>
        <translation>%1 verdampfen mit %2, ein stetiges Kochen: %3.</translation>
    </message>
    <message>
        <source>%1 boils off with %2, a strong boil: %3.</source>
        <translation>%1 verdampfen mit %2, ein kräftiges Kochen: %3.</translation>
    </message>
    <message>
        <source>%1 boils off with %2, a fierce boil: %3.</source>
        <translation>%1 verdampfen mit %2, ein heftiges Kochen: %3.</translation>
    </message>
    <message>
        <source>Boil-off against element power</source>
        <translation>Verdampfung über der Leistung des Heizelements</translation>
    </message>
    <message>
        <source>Element, rated at its supply&apos;s voltage, W</source>
        <translation>Heizelement, Nennleistung bei der Netzspannung, W</translation>
    </message>
    <message>
        <source>Boil-off, percent of the volume before the boil per hour</source>
        <translation>Verdampfung, Prozent des Volumens vor dem Kochen je Stunde</translation>
    </message>
    <message>
        <source>Joint Research Centre, Best environmental management practice: food and beverage</source>
        <translation>Joint Research Centre, Best environmental management practice: food and beverage</translation>
    </message>
    <message>
        <source>vigour</source>
        <translation>Heftigkeit</translation>
    </message>
    <message>
        <source>boil-off, %/h</source>
        <translation>Verdampfung, %/h</translation>
    </message>
    <message>
        <source>boil-off as cold water, %1</source>
        <translation>Verdampfung als kaltes Wasser, %1</translation>
    </message>
    <message>
        <source>net heat into the boil, W</source>
        <translation>Wärme, die dem Kochen bleibt, W</translation>
    </message>
    <message>
        <source>before the boil, %1</source>
        <translation>vor dem Kochen, %1</translation>
    </message>
    <message>
        <source>in the end, %1</source>
        <translation>am Ende, %1</translation>
    </message>
    <message>
        <source>levels off at, %1</source>
        <translation>bleibt stehen bei, %1</translation>
    </message>
    <message>
        <source>No element boils %1 within %2 and boils off %3.</source>
        <translation>Kein Heizelement bringt %1 in %2 zum Kochen und verdampft %3.</translation>
    </message>
    <message>
        <source>%1 of heat is what %2 needs to boil within %3 and boil off %4: more than its cable can carry.</source>
        <translation>%1 Wärme braucht %2, um in %3 zu kochen und %4 zu verdampfen: mehr, als das Kabel trägt.</translation>
    </message>
    <message>
        <source>%1 at %5 is enough for %2 to boil within %3 and boil off %4; its own is stronger.</source>
        <translation>%1 bei %5 genügen %2, um in %3 zu kochen und %4 zu verdampfen; das eigene Heizelement ist stärker.</translation>
    </message>
    <message>
        <source>%1 at %5 is what %2 needs to boil within %3 and boil off %4; its own is too weak, its circuit carries that.</source>
        <translation>%1 bei %5 braucht %2, um in %3 zu kochen und %4 zu verdampfen; das eigene Heizelement ist zu schwach, der Stromkreis trägt es.</translation>
    </message>
    <message>
        <source>%1 at %5 is what %2 needs to boil within %3 and boil off %4; its own is too weak, and its circuit does not carry that.</source>
        <translation>%1 bei %5 braucht %2, um in %3 zu kochen und %4 zu verdampfen; das eigene Heizelement ist zu schwach, und der Stromkreis trägt es nicht.</translation>
    </message>
    <message>
        <source>Time from mash to boil against element power</source>
        <translation>Zeit von der Maische bis zum Kochen über der Leistung des Heizelements</translation>
    </message>
    <message>
        <source>Minutes from mash to boil; dotted: what a circuit carries</source>
        <translation>Minuten von der Maische bis zum Kochen; gepunktet: was ein Stromkreis trägt</translation>
    </message>
    <message>
        <source>wanted: %1</source>
        <translation>gewünscht: %1</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>element rated, W</source>
        <translation>Heizelement, Nennleistung, W</translation>
    </message>
    <message>
        <source>rated at, V</source>
        <translation>Nennspannung, V</translation>
    </message>
    <message>
        <source>supply, V</source>
        <translation>Netz, V</translation>
    </message>
    <message>
        <source>circuit, A</source>
        <translation>Stromkreis, A</translation>
    </message>
    <message>
        <source>current, A</source>
        <translation>Strom, A</translation>
    </message>
    <message>
        <source>reaches the vessel, W</source>
        <translation>kommt im Gefäß an, W</translation>
    </message>
    <message>
        <source>from mash to boil, min</source>
        <translation>von der Maische bis zum Kochen, min</translation>
    </message>
    <message>
        <source>Element needed, rated at the supply, W</source>
        <translation>Nötiges Heizelement, Nennleistung am Netz, W</translation>
    </message>
    <message>
        <source>to boil at all</source>
        <translation>um überhaupt zu kochen</translation>
    </message>
    <message>
        <source>from mash to boil within %1</source>
        <translation>von der Maische bis zum Kochen in %1</translation>
    </message>
    <message>
        <source>to strike within %1</source>
        <translation>bis zum Einmaischen in %1</translation>
    </message>
    <message>
        <source>to boil off %1</source>
        <translation>um %1 zu verdampfen</translation>
    </message>
    <message>
        <source>most its circuit carries</source>
        <translation>das Meiste, was der Stromkreis trägt</translation>
    </message>
    <message>
        <source>No boil is planned.</source>
        <translation>Es ist kein Kochen geplant.</translation>
    </message>
    <message>
        <source>Being worked out …</source>
        <translation>Wird berechnet …</translation>
    </message>
    <message>
        <source>kept in wort and vessel</source>
        <translation>bleibt in Würze und Gefäß</translation>
    </message>
    <message>
        <source>lifted out with the grain</source>
        <translation>mit dem Treber herausgehoben</translation>
    </message>
    <message>
        <source>steam</source>
        <translation>Dampf</translation>
    </message>
    <message>
        <source>open surface</source>
        <translation>offene Oberfläche</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>dry wall above the wort</source>
        <translation>trockene Wand über der Würze</translation>
    </message>
    <message>
        <source>base</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>cable</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Heat leaving %1, by path</source>
        <translation>Wärme, die %1 verlässt, nach Wegen</translation>
    </message>
    <message>
        <source>Time since the start, h:min</source>
        <translation>Zeit seit dem Beginn, h:min</translation>
    </message>
    <message>
        <source>Power, %1; what is left below the element&apos;s line warms the wort</source>
        <translation>Leistung, %1; was unter der Linie des Heizelements bleibt, wärmt die Würze</translation>
    </message>
    <message>
        <source>from the element</source>
        <translation>vom Heizelement</translation>
    </message>
    <message>
        <source>Where the day&apos;s heat went</source>
        <translation>Wohin die Wärme des Tages ging</translation>
    </message>
    <message>
        <source>Energy, %1</source>
        <translation>Energie, %1</translation>
    </message>
    <message>
        <source>%1 came into %2: %3 of it left as steam, %4 warmed wort, grain and vessel, and %5 was lost through walls, lid, surface and cable.</source>
        <translation>%1 kamen in %2: %3 davon gingen als Dampf davon, %4 wärmten Würze, Malz und Gefäß, und %5 gingen durch Wände, Deckel, Oberfläche und Kabel verloren.</translation>
    </message>
    <message>
        <source>Came in, %1</source>
        <translation>Kam hinein, %1</translation>
    </message>
    <message>
        <source>from the wall</source>
        <translation>aus der Steckdose</translation>
    </message>
    <message>
        <source>from wetting the grain</source>
        <translation>vom Benetzen des Malzes</translation>
    </message>
    <message>
        <source>Went to, %1</source>
        <translation>Ging wohin, %1</translation>
    </message>
    <message>
        <source>%1 only boils with its jacket.</source>
        <translation>%1 kocht nur mit dem Mantel.</translation>
    </message>
    <message>
        <source>%1 a batch is what a jacket saves with %2, which still does not boil.</source>
        <translation>%1 je Sud spart ein Mantel mit %2, und es kocht trotzdem nicht.</translation>
    </message>
    <message>
        <source>%1 from mash to boil and %2 a batch is what a jacket saves with %3: worth it.</source>
        <translation>%1 von der Maische bis zum Kochen und %2 je Sud spart ein Mantel mit %3: Er lohnt sich.</translation>
    </message>
    <message>
        <source>%1 from mash to boil and %2 a batch is what a jacket saves with %3: not worth it for the time, but for the heat it holds.</source>
        <translation>%1 von der Maische bis zum Kochen und %2 je Sud spart ein Mantel mit %3: Er lohnt sich nicht der Zeit wegen, aber für die Wärme, die er hält.</translation>
    </message>
    <message>
        <source>%1 from mash to boil and %2 a batch is what a jacket saves with %3: not worth it.</source>
        <translation>%1 von der Maische bis zum Kochen und %2 je Sud spart ein Mantel mit %3: Er lohnt sich nicht.</translation>
    </message>
    <message>
        <source>Insulation on the side, %1</source>
        <translation>Dämmung an der Wand, %1</translation>
    </message>
    <message>
        <source>Time a jacket saves</source>
        <translation>Zeit, die ein Mantel spart</translation>
    </message>
    <message>
        <source>Minutes saved from mash to boil</source>
        <translation>Gesparte Minuten von der Maische bis zum Kochen</translation>
    </message>
    <message>
        <source>Money a jacket saves</source>
        <translation>Geld, das ein Mantel spart</translation>
    </message>
    <message>
        <source>%1 saved a batch</source>
        <translation>%1 gespart je Sud</translation>
    </message>
    <message>
        <source>Energy a jacket saves</source>
        <translation>Energie, die ein Mantel spart</translation>
    </message>
    <message>
        <source>without jacket</source>
        <translation>ohne Mantel</translation>
    </message>
    <message>
        <source>with jacket</source>
        <translation>mit Mantel</translation>
    </message>
    <message>
        <source>saved, min</source>
        <translation>gespart, min</translation>
    </message>
    <message>
        <source>jacket compared</source>
        <translation>verglichener Mantel</translation>
    </message>
    <message>
        <source>To strike, h:min</source>
        <translation>Bis zum Einmaischen, h:min</translation>
    </message>
    <message>
        <source>From mash to boil, h:min</source>
        <translation>Von der Maische bis zum Kochen, h:min</translation>
    </message>
    <message>
        <source>From the wall, whole day, %1</source>
        <translation>Aus der Steckdose, ganzer Tag, %1</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>gespart</translation>
    </message>
    <message>
        <source>saved, %1</source>
        <translation>gespart, %1</translation>
    </message>
    <message>
        <source>Lost at the boil, W</source>
        <translation>Verlust beim Kochen, W</translation>
    </message>
    <message>
        <source>heating the strike water</source>
        <translation>Einmaischwasser erhitzen</translation>
    </message>
    <message>
        <source>between rests</source>
        <translation>zwischen den Rasten</translation>
    </message>
    <message>
        <source>holding rests</source>
        <translation>Rasten halten</translation>
    </message>
    <message>
        <source>heating to the boil</source>
        <translation>bis zum Kochen erhitzen</translation>
    </message>
    <message>
        <source>boiling</source>
        <translation>kochen</translation>
    </message>
    <message>
        <source>What a batch costs, stage by stage</source>
        <translation>Was ein Sud kostet, Schritt für Schritt</translation>
    </message>
    <message>
        <source>Energy of a batch, stage by stage</source>
        <translation>Energie eines Suds, Schritt für Schritt</translation>
    </message>
    <message>
        <source>%1 a batch</source>
        <translation>%1 je Sud</translation>
    </message>
    <message>
        <source>Energy from the wall, %1</source>
        <translation>Energie aus der Steckdose, %1</translation>
    </message>
    <message>
        <source>a batch</source>
        <translation>je Sud</translation>
    </message>
    <message>
        <source>Cost, %1</source>
        <translation>Kosten, %1</translation>
    </message>
    <message>
        <source>a %1 of wort in the end</source>
        <translation>je %1 fertiger Würze</translation>
    </message>
    <message>
        <source>a year of %1 batches</source>
        <translation>in einem Jahr mit %1 Suden</translation>
    </message>
    <message>
        <source>No rig of this plan has a jacket to compare.</source>
        <translation>Keine Anlage dieses Plans hat einen Mantel zum Vergleichen.</translation>
    </message>
    <message>
        <source>%1 a batch with %2: %3/%4, and %5 a year of %6 batches.</source>
        <translation>%1 je Sud mit %2: %3/%4, und %5 im Jahr bei %6 Suden.</translation>
    </message>
    <message>
        <source>%1 a batch with %2, the cheapest: %3/%4, and %5 a year of %6 batches.</source>
        <translation>%1 je Sud mit %2, am billigsten: %3/%4, und %5 im Jahr bei %6 Suden.</translation>
    </message>
    <message>
        <source>%1 with %2, the dearest: %3/%4, and %5 a year of %6 batches.</source>
        <translation>%1 mit %2, am teuersten: %3/%4, und %5 im Jahr bei %6 Suden.</translation>
    </message>
    <message>
        <source>%1 a batch with %2, the least; the plan gives no price.</source>
        <translation>%1 je Sud mit %2, am wenigsten; der Plan nennt keinen Preis.</translation>
    </message>
    <message>
        <source>%1 with %2, the most.</source>
        <translation>%1 mit %2, am meisten.</translation>
    </message>
    <message>
        <source>Temperature of the wort over the day</source>
        <translation>Temperatur der Würze über den Tag</translation>
    </message>
    <message>
        <source>Temperature, %1</source>
        <translation>Temperatur, %1</translation>
    </message>
    <message>
        <source>%1 boil %2</source>
        <translation>%1 kocht %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The day, stage by stage</source>
        <translation>Der Tag, Schritt für Schritt</translation>
    </message>
    <message>
        <source>Takes, h:min</source>
        <translation>Dauert, h:min</translation>
    </message>
    <message>
        <source>whole day</source>
        <translation>ganzer Tag</translation>
    </message>
    <message>
        <source>By the clock</source>
        <translation>Nach der Uhr</translation>
    </message>
    <message>
        <source>strike water ready</source>
        <translation>Einmaischwasser bereit</translation>
    </message>
    <message>
        <source>boil begins</source>
        <translation>Kochen beginnt</translation>
    </message>
    <message>
        <source>boil ends</source>
        <translation>Kochen endet</translation>
    </message>
    <message>
        <source>%1 with %2, from cold water to the end of the day.</source>
        <translation>%1 mit %2, vom kalten Wasser bis zum Ende des Tages.</translation>
    </message>
    <message>
        <source>%1 with %2, the quickest, from cold water to the end of the day.</source>
        <translation>%1 mit %2, am schnellsten, vom kalten Wasser bis zum Ende des Tages.</translation>
    </message>
    <message>
        <source>%1 with %2, the slowest.</source>
        <translation>%1 mit %2, am langsamsten.</translation>
    </message>
    <message>
        <source>%1 is what a full mash in %2 has with its jacket after %4 unplugged, and %3 without.</source>
        <translation>%1 hat eine volle Maische in %2 mit Mantel nach %4 ohne Strom, und %3 ohne Mantel.</translation>
    </message>
    <message>
        <source>%1 after %4 in %2 with its jacket, and %3 without.</source>
        <translation>%1 nach %4 in %2 mit Mantel, und %3 ohne.</translation>
    </message>
    <message>
        <source>A full mash left unplugged</source>
        <translation>Eine volle Maische ohne Strom</translation>
    </message>
    <message>
        <source>Time left alone, h:min</source>
        <translation>Zeit ohne Strom, h:min</translation>
    </message>
    <message>
        <source>the same without its jacket</source>
        <translation>dasselbe ohne Mantel</translation>
    </message>
    <message>
        <source>%1 as planned</source>
        <translation>%1 wie geplant</translation>
    </message>
    <message>
        <source>Unplugged for %1, %2</source>
        <translation>Ohne Strom für %1, %2</translation>
    </message>
    <message>
        <source>Unplugged for %1 h, %2</source>
        <translation>Ohne Strom für %1 h, %2</translation>
    </message>
    <message>
        <source>%3 is what %2 comes to with the lid as it is for heating, but it does not boil: there it would lose %4 in the boil and gets %5, and falls back to %1.</source>
        <translation>%3 erreicht %2 mit dem Deckel wie beim Aufheizen, kocht aber nicht: Im Kochen gingen dort %4 verloren, %5 kommen an, und es fällt auf %1 zurück.</translation>
    </message>
    <message>
        <source>%1 is where %2 levels off: it does not boil, since at %3 it would lose %4 and gets %5.</source>
        <translation>Bei %1 bleibt %2 stehen: Es kocht nicht, denn bei %3 gingen %4 verloren und %5 kommen an.</translation>
    </message>
    <message>
        <source>%1; 5–8 %/h: best practice in breweries</source>
        <translation>%1; 5–8 %/h: beste Praxis in Brauereien</translation>
    </message>
    <message>
        <source>%1; 10–15 %/h: usual in small open kettles</source>
        <translation>%1; 10–15 %/h: üblich in kleinen offenen Kesseln</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Power, %1</source>
        <translation>Leistung, %1</translation>
    </message>
    <message>
        <source>%1 begins, %2</source>
        <translation>%1 beginnt, %2</translation>
    </message>
    <message>
        <source>%1 ends, %2</source>
        <translation>%1 endet, %2</translation>
    </message>
</context>
<context>
    <name>PlanFields</name>
    <message>
        <source>Batch</source>
        <translation>Sud</translation>
    </message>
    <message>
        <source>Wort wanted</source>
        <translation>Gewünschte Würze</translation>
    </message>
    <message>
        <source>Cold finished wort after the boil, at 20 °C; 0.5 to 2000 L. The water to pour follows from it. Stands instead of the water.</source>
        <translation>Kalte fertige Würze nach dem Kochen, bei 20 °C; 0,5 bis 2000 L. Das einzufüllende Wasser folgt daraus. Steht anstelle des Wassers.</translation>
    </message>
    <message>
        <source>or water poured</source>
        <translation>oder eingefülltes Wasser</translation>
    </message>
    <message>
        <source>Cold water poured in, at 20 °C; 0.5 to 2000 L. The wort follows from it. Stands instead of the wort.</source>
        <translation>Eingefülltes kaltes Wasser, bei 20 °C; 0,5 bis 2000 L. Die Würze folgt daraus. Steht anstelle der Würze.</translation>
    </message>
    <message>
        <source>Length of the boil</source>
        <translation>Dauer des Kochens</translation>
    </message>
    <message>
        <source>How long it is kept boiling, 0 to 12 h.</source>
        <translation>Wie lange gekocht wird, 0 bis 12 h.</translation>
    </message>
    <message>
        <source>Mashing in</source>
        <translation>Einmaischen</translation>
    </message>
    <message>
        <source>Grain going in, with lid and element off; 0 to 60 min.</source>
        <translation>Das Malz kommt hinein, ohne Deckel und mit ausgeschaltetem Heizelement; 0 bis 60 min.</translation>
    </message>
    <message>
        <source>Mash</source>
        <translation>Maische</translation>
    </message>
    <message>
        <source>Rest %1</source>
        <translation>Rast %1</translation>
    </message>
    <message>
        <source>Temperature that a controller holds, 20 to 100 °C and at least 1 K below boiling. The strike temperature follows from the first rest.</source>
        <translation>Temperatur, die ein Regler hält, 20 bis 100 °C und mindestens 1 K unter dem Kochen. Die Einmaischtemperatur folgt aus der ersten Rast.</translation>
    </message>
    <message>
        <source>Rest %1 lasts</source>
        <translation>Rast %1 dauert</translation>
    </message>
    <message>
        <source>How long the rest is held, 0 to 24 h.</source>
        <translation>Wie lange die Rast gehalten wird, 0 bis 24 h.</translation>
    </message>
    <message>
        <source>or unplugged from</source>
        <translation>oder ohne Strom ab</translation>
    </message>
    <message>
        <source>Temperature at which the mash is left alone with the element off. Stands instead of the rests.</source>
        <translation>Temperatur, bei der die Maische mit ausgeschaltetem Heizelement allein bleibt. Steht anstelle der Rasten.</translation>
    </message>
    <message>
        <source>Unplugged for</source>
        <translation>Ohne Strom für</translation>
    </message>
    <message>
        <source>How long the mash is left alone, 0 to 48 h.</source>
        <translation>Wie lange die Maische allein bleibt, 0 bis 48 h.</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Malz</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>As weighed, 1 g to 500 kg. Left empty: no mash, straight to the boil.</source>
        <translation>Wie gewogen, 1 g bis 500 kg. Leer: keine Maische, gleich zum Kochen.</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Of the grain before mashing in, -20 to 60 °C; as warm as the room if not stated.</source>
        <translation>Des Malzes vor dem Einmaischen, -20 bis 60 °C; so warm wie der Raum, wenn nicht angegeben.</translation>
    </message>
    <message>
        <source>as the room</source>
        <translation>wie der Raum</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Share of water in the grain, 0 to 15 %.</source>
        <translation>Anteil des Wassers im Malz, 0 bis 15 %.</translation>
    </message>
    <message>
        <source>Extract</source>
        <translation>Extrakt</translation>
    </message>
    <message>
        <source>Mass dissolved from each mass of grain, 10 to 95 %: yield and efficiency together.</source>
        <translation>Masse, die sich aus der Masse des Malzes löst, 10 bis 95 %: Ausbeute und Wirkungsgrad zusammen.</translation>
    </message>
    <message>
        <source>Absorption</source>
        <translation>Aufnahme</translation>
    </message>
    <message>
        <source>Wort that stays in the lifted grain, 0 to 3 L/kg.</source>
        <translation>Würze, die im herausgehobenen Treber bleibt, 0 bis 3 L/kg.</translation>
    </message>
    <message>
        <source>Displacement</source>
        <translation>Verdrängung</translation>
    </message>
    <message>
        <source>Volume that the grain takes in the mash, 0.3 to 1.5 L/kg.</source>
        <translation>Volumen, das das Malz in der Maische einnimmt, 0,3 bis 1,5 L/kg.</translation>
    </message>
    <message>
        <source>Specific heat</source>
        <translation>Spezifische Wärme</translation>
    </message>
    <message>
        <source>500 to 4200 J/(kg K); follows from the moisture if not stated.</source>
        <translation>500 bis 4200 J/(kg K); folgt aus der Feuchte, wenn nicht angegeben.</translation>
    </message>
    <message>
        <source>from moisture</source>
        <translation>aus der Feuchte</translation>
    </message>
    <message>
        <source>Slaking heat</source>
        <translation>Benetzungswärme</translation>
    </message>
    <message>
        <source>Given off when the grain is wetted, 0 to 100 kJ/kg; follows from the moisture if not stated.</source>
        <translation>Wird frei, wenn das Malz benetzt wird, 0 bis 100 kJ/kg; folgt aus der Feuchte, wenn nicht angegeben.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>Above the sea in the standard atmosphere, -430 to 5200 m. It decides when water boils. Stands instead of a pressure.</source>
        <translation>Über dem Meer in der Normatmosphäre, -430 bis 5200 m. Sie bestimmt, wann Wasser kocht. Steht anstelle eines Drucks.</translation>
    </message>
    <message>
        <source>or air pressure</source>
        <translation>oder Luftdruck</translation>
    </message>
    <message>
        <source>As it is at the place, not reduced to the sea; 50 to 110 kPa. Stands instead of an altitude.</source>
        <translation>Wie er am Ort herrscht, nicht auf Meereshöhe umgerechnet; 50 bis 110 kPa. Steht anstelle einer Höhe.</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Temperature of the air, -10 to 50 °C; the kettle starts as warm.</source>
        <translation>Temperatur der Luft, -10 bis 50 °C; der Kessel ist am Anfang ebenso warm.</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Temperature of the water as drawn, 0.5 to 95 °C.</source>
        <translation>Temperatur des Wassers aus der Leitung, 0,5 bis 95 °C.</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Relative humidity of the room, 1 to 100 %.</source>
        <translation>Relative Luftfeuchte des Raums, 1 bis 100 %.</translation>
    </message>
    <message>
        <source>Draught</source>
        <translation>Luftzug</translation>
    </message>
    <message>
        <source>Speed of the air over an open kettle, 0 to 5 m/s.</source>
        <translation>Geschwindigkeit der Luft über einem offenen Kessel, 0 bis 5 m/s.</translation>
    </message>
    <message>
        <source>Goals</source>
        <translation>Ziele</translation>
    </message>
    <message>
        <source>Boil within</source>
        <translation>Kochen in</translation>
    </message>
    <message>
        <source>Time wanted to strike, and from mash to boil; 1 min to 12 h.</source>
        <translation>Gewünschte Zeit bis zum Einmaischen und von der Maische bis zum Kochen; 1 min bis 12 h.</translation>
    </message>
    <message>
        <source>Boil-off</source>
        <translation>Verdampfung</translation>
    </message>
    <message>
        <source>Share of the volume before the boil that is to boil off, 0.1 to 50 %/h.</source>
        <translation>Anteil des Volumens vor dem Kochen, der verdampfen soll, 0,1 bis 50 %/h.</translation>
    </message>
    <message>
        <source>Headspace</source>
        <translation>Freier Raum</translation>
    </message>
    <message>
        <source>Share of the vessel to be kept free, 0 to 80 %.</source>
        <translation>Anteil des Gefäßes, der frei bleiben soll, 0 bis 80 %.</translation>
    </message>
    <message>
        <source>Left alone for</source>
        <translation>Allein gelassen für</translation>
    </message>
    <message>
        <source>How long the kettle is left alone for the question how far it cools, 1 min to 48 h.</source>
        <translation>Wie lange der Kessel allein bleibt, für die Frage, wie weit er abkühlt; 1 min bis 48 h.</translation>
    </message>
    <message>
        <source>Price of energy</source>
        <translation>Energiepreis</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Number, currency and /kWh, such as 0.28 EUR/kWh or $0.17/kWh. Without it there is no money in the answers.</source>
        <translation>Zahl, Währung und /kWh, etwa 0.28 EUR/kWh oder $0.17/kWh. Ohne ihn steht in den Antworten kein Geld.</translation>
    </message>
    <message>
        <source>Dated</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Year and month, or a day: 2026-01 or 2026-01-31.</source>
        <translation>Jahr und Monat, oder ein Tag: 2026-01 oder 2026-01-31.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Shown above every answer, up to 200 characters.</source>
        <translation>Steht über jeder Antwort, bis zu 200 Zeichen.</translation>
    </message>
    <message>
        <source>Day starts</source>
        <translation>Tag beginnt</translation>
    </message>
    <message>
        <source>Clock time at which the brew day begins, such as 09:00.</source>
        <translation>Uhrzeit, zu der der Brautag beginnt, etwa 09:00.</translation>
    </message>
    <message>
        <source>Jacket to compare</source>
        <translation>Mantel zum Vergleich</translation>
    </message>
    <message>
        <source>Side layer %1</source>
        <translation>Wand, Schicht %1</translation>
    </message>
    <message>
        <source>Lid layer %1</source>
        <translation>Deckel, Schicht %1</translation>
    </message>
    <message>
        <source>Kettle</source>
        <translation>Kessel</translation>
    </message>
    <message>
        <source>Inner diameter</source>
        <translation>Innendurchmesser</translation>
    </message>
    <message>
        <source>80 to 2000 mm.</source>
        <translation>80 bis 2000 mm.</translation>
    </message>
    <message>
        <source>Inner height</source>
        <translation>Innenhöhe</translation>
    </message>
    <message>
        <source>From the base to the rim, inside; 50 to 2500 mm.</source>
        <translation>Vom Boden bis zum Rand, innen; 50 bis 2500 mm.</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Thickness of the metal, 0.2 to 20 mm.</source>
        <translation>Dicke des Metalls, 0,2 bis 20 mm.</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>What the kettle is made of.</source>
        <translation>Woraus der Kessel besteht.</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>How the metal looks, and so how it radiates. Stands instead of an emissivity.</source>
        <translation>Wie das Metall aussieht und damit strahlt. Steht anstelle eines Emissionsgrads.</translation>
    </message>
    <message>
        <source>or emissivity</source>
        <translation>oder Emissionsgrad</translation>
    </message>
    <message>
        <source>Share of a black body&apos;s radiation, 0.01 to 1. Stands instead of a finish.</source>
        <translation>Anteil an der Strahlung eines schwarzen Körpers, 0,01 bis 1. Steht anstelle einer Oberfläche.</translation>
    </message>
    <message>
        <source>Of the shell without lid, 0.1 to 1000 kg; from size and material if not stated. State it again when you change the size.</source>
        <translation>Des Gefäßes ohne Deckel, 0,1 bis 1000 kg; aus Größe und Werkstoff, wenn nicht angegeben. Geben Sie sie neu an, wenn Sie die Größe ändern.</translation>
    </message>
    <message>
        <source>from the size</source>
        <translation>aus der Größe</translation>
    </message>
    <message>
        <source>Element</source>
        <translation>Heizelement</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>As on the name plate, 50 W to 60 kW.</source>
        <translation>Wie auf dem Typenschild, 50 W bis 60 kW.</translation>
    </message>
    <message>
        <source>Rated voltage</source>
        <translation>Nennspannung</translation>
    </message>
    <message>
        <source>As on the name plate, 12 to 690 V. On another voltage the power follows its square.</source>
        <translation>Wie auf dem Typenschild, 12 bis 690 V. An anderer Spannung folgt die Leistung ihrem Quadrat.</translation>
    </message>
    <message>
        <source>Height of its top</source>
        <translation>Höhe der Oberkante</translation>
    </message>
    <message>
        <source>Highest heated point above the inside of the base, 0 to 1.5 m; 0 mm for a heater outside. It must stay covered.</source>
        <translation>Höchster beheizter Punkt über dem Boden innen, 0 bis 1,5 m; 0 mm bei Heizung von außen. Er muss bedeckt bleiben.</translation>
    </message>
    <message>
        <source>Power in the boil</source>
        <translation>Leistung beim Kochen</translation>
    </message>
    <message>
        <source>Share of the element&apos;s power used in the boil, 5 to 100 %.</source>
        <translation>Anteil der Leistung des Heizelements, der beim Kochen genutzt wird, 5 bis 100 %.</translation>
    </message>
    <message>
        <source>Circuit and cable</source>
        <translation>Stromkreis und Kabel</translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation>Stromkreis</translation>
    </message>
    <message>
        <source>A usual circuit at its nominal voltage. Your own numbers below stand instead of the catalogue&apos;s. Mains current kills: have a licensed electrician check circuit, plug, cable and enclosure.</source>
        <translation>Ein üblicher Stromkreis mit seiner Nennspannung. Ihre eigenen Zahlen darunter gelten anstelle derer des Katalogs. Netzstrom tötet: Lassen Sie Stromkreis, Stecker, Kabel und Gehäuse von einer Elektrofachkraft prüfen.</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Nominal, 12 to 690 V.</source>
        <translation>Nennwert, 12 bis 690 V.</translation>
    </message>
    <message>
        <source>of the circuit</source>
        <translation>des Stromkreises</translation>
    </message>
    <message>
        <source>Breaker</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Rated current of breaker or fuse, 1 to 400 A.</source>
        <translation>Nennstrom der Sicherung, 1 bis 400 A.</translation>
    </message>
    <message>
        <source>For long use</source>
        <translation>Für Dauerlast</translation>
    </message>
    <message>
        <source>Share of the current that a rule grants to long use, 50 to 100 %.</source>
        <translation>Anteil des Stroms, den eine Regel für Dauerlast zulässt, 50 bis 100 %.</translation>
    </message>
    <message>
        <source>Cable length</source>
        <translation>Kabellänge</translation>
    </message>
    <message>
        <source>From panel to element, one way, 0 to 200 m. Left empty: no loss in the cable.</source>
        <translation>Vom Verteiler bis zum Heizelement, einfach, 0 bis 200 m. Leer: kein Verlust im Kabel.</translation>
    </message>
    <message>
        <source>no loss</source>
        <translation>kein Verlust</translation>
    </message>
    <message>
        <source>Conductor</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Copper temperature</source>
        <translation>Temperatur des Kupfers</translation>
    </message>
    <message>
        <source>Of the copper in use, -20 to 105 °C.</source>
        <translation>Des Kupfers im Betrieb, -20 bis 105 °C.</translation>
    </message>
    <message>
        <source>or loop resistance</source>
        <translation>oder Schleifenwiderstand</translation>
    </message>
    <message>
        <source>Of the cable there and back, 0 to 10 ohm. Stands instead of length and conductor.</source>
        <translation>Des Kabels hin und zurück, 0 bis 10 Ohm. Steht anstelle von Länge und Leiter.</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>What the lid is made of, or none: open all day.</source>
        <translation>Woraus der Deckel besteht, oder none: den ganzen Tag offen.</translation>
    </message>
    <message>
        <source>no lid</source>
        <translation>kein Deckel</translation>
    </message>
    <message>
        <source>How it looks, and so how it radiates. Stands instead of an emissivity.</source>
        <translation>Wie er aussieht und damit strahlt. Steht anstelle eines Emissionsgrads.</translation>
    </message>
    <message>
        <source>0.01 to 1. Stands instead of a finish.</source>
        <translation>0,01 bis 1. Steht anstelle einer Oberfläche.</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>0.2 to 100 mm; as thin as the wall if not stated. It matters for wood and plastic.</source>
        <translation>0,2 bis 100 mm; so dünn wie die Wand, wenn nicht angegeben. Bei Holz und Kunststoff kommt es darauf an.</translation>
    </message>
    <message>
        <source>as the wall</source>
        <translation>wie die Wand</translation>
    </message>
    <message>
        <source>Share of the mouth that is open in this stage, 0 to 100 %. Never shut the lid on a boil.</source>
        <translation>Anteil der Öffnung, der in diesem Schritt offen ist, 0 bis 100 %. Beim Kochen nie den Deckel schließen.</translation>
    </message>
    <message>
        <source>Open at strike</source>
        <translation>Offen beim Einmaischwasser</translation>
    </message>
    <message>
        <source>Open at mash</source>
        <translation>Offen beim Maischen</translation>
    </message>
    <message>
        <source>Open at heating</source>
        <translation>Offen beim Erhitzen</translation>
    </message>
    <message>
        <source>Open at the boil</source>
        <translation>Offen beim Kochen</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Steht auf</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>What is under the kettle.</source>
        <translation>Was unter dem Kessel ist.</translation>
    </message>
    <message>
        <source>Of the table or the floor.</source>
        <translation>Des Tisches oder des Fußbodens.</translation>
    </message>
    <message>
        <source>Of a table, 1 to 200 mm.</source>
        <translation>Eines Tisches, 1 bis 200 mm.</translation>
    </message>
    <message>
        <source>Recirculation hose</source>
        <translation>Umwälzschlauch</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Of the hose used while the mash is held, 0 to 20 m. Left empty: no hose.</source>
        <translation>Des Schlauchs, durch den beim Maischen umgewälzt wird, 0 bis 20 m. Leer: kein Schlauch.</translation>
    </message>
    <message>
        <source>no hose</source>
        <translation>kein Schlauch</translation>
    </message>
    <message>
        <source>Outer diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>4 to 100 mm.</source>
        <translation>4 bis 100 mm.</translation>
    </message>
    <message>
        <source>0.3 to 20 mm.</source>
        <translation>0,3 bis 20 mm.</translation>
    </message>
    <message>
        <source>What the hose is made of.</source>
        <translation>Woraus der Schlauch besteht.</translation>
    </message>
    <message>
        <source>Wrap %1</source>
        <translation>Umhüllung %1</translation>
    </message>
    <message>
        <source>Material of this layer, counted from the metal outwards.</source>
        <translation>Werkstoff dieser Schicht, vom Metall nach außen gezählt.</translation>
    </message>
    <message>
        <source>Thickness or R</source>
        <translation>Dicke oder R</translation>
    </message>
    <message>
        <source>Thickness of the layer, 0.1 to 300 mm; or its thermal resistance as stated by the maker, such as R 1.8 (US) or 0.3 m2*K/W, 0.001 to 20 m²·K/W.</source>
        <translation>Dicke der Schicht, 0,1 bis 300 mm; oder ihr Wärmedurchlasswiderstand, wie der Hersteller ihn angibt, etwa R 1.8 (US) oder 0.3 m2*K/W, 0,001 bis 20 m²·K/W.</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Außenseite</translation>
    </message>
    <message>
        <source>How the outside radiates; as the outermost layer if not stated.</source>
        <translation>Wie die Außenseite strahlt; wie die äußerste Schicht, wenn nicht angegeben.</translation>
    </message>
    <message>
        <source>as the layer</source>
        <translation>wie die Schicht</translation>
    </message>
    <message>
        <source>Jacket</source>
        <translation>Mantel</translation>
    </message>
    <message>
        <source>Base layer %1</source>
        <translation>Boden, Schicht %1</translation>
    </message>
    <message>
        <source>From your own measurement</source>
        <translation>Aus eigener Messung</translation>
    </message>
    <message>
        <source>Evaporation factor</source>
        <translation>Verdunstungsfaktor</translation>
    </message>
    <message>
        <source>Plain number on the law of the open surface, from a measured boil-off; 0.1 to 5.</source>
        <translation>Reine Zahl auf das Gesetz der offenen Oberfläche, aus einer gemessenen Verdampfung; 0,1 bis 5.</translation>
    </message>
    <message>
        <source>Area of the copper, 0.3 to 150 mm², or as 14 AWG; always shown as written, since cable is sold by that name.</source>
        <translation>Querschnitt des Kupfers, 0,3 bis 150 mm², oder als 14 AWG; immer gezeigt wie geschrieben, denn Kabel wird unter diesem Namen verkauft.</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>&amp;Rig</source>
        <translation>&amp;Anlage</translation>
    </message>
    <message>
        <source>&amp;Batches a year</source>
        <translation>&amp;Sude im Jahr</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <source>&amp;Against</source>
        <translation>&amp;Über</translation>
    </message>
    <message>
        <source>power over time, one rig</source>
        <translation>Leistung über der Zeit, eine Anlage</translation>
    </message>
    <message>
        <source>energy of the day, all rigs</source>
        <translation>Energie des Tages, alle Anlagen</translation>
    </message>
    <message>
        <source>thickness of the insulation</source>
        <translation>Dicke der Dämmung</translation>
    </message>
    <message>
        <source>power of the element</source>
        <translation>Leistung des Heizelements</translation>
    </message>
    <message>
        <source>The same numbers as a table</source>
        <translation>Dieselben Zahlen als Tabelle</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnungen</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>&amp;Whole answer</source>
        <translation>&amp;Ganze Antwort</translation>
    </message>
    <message>
        <source>Shows or folds away what follows the first sentence</source>
        <translation>Zeigt oder verbirgt, was auf den ersten Satz folgt</translation>
    </message>
</context>
<context>
    <name>gui::Exports</name>
    <message>
        <source>%1 has an ending that is unknown here; .svg, .png, .csv or .json is accepted</source>
        <translation>%1 hat eine Endung, die hier unbekannt ist; angenommen wird .svg, .png, .csv oder .json</translation>
    </message>
</context>
<context>
    <name>gui::FieldCell</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>change of %1</source>
        <translation>Änderung von %1</translation>
    </message>
    <message>
        <source>Written as %1.</source>
        <translation>Geschrieben als %1.</translation>
    </message>
    <message>
        <source>Not stated here: %1, as in %2.</source>
        <translation>Hier nicht angegeben: %1, wie in %2.</translation>
    </message>
    <message>
        <source>Not stated: %1.</source>
        <translation>Nicht angegeben: %1.</translation>
    </message>
    <message>
        <source>%1 (as in %2)</source>
        <translation>%1 (wie in %2)</translation>
    </message>
    <message>
        <source>%1 (not stated)</source>
        <translation>%1 (nicht angegeben)</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
</context>
<context>
    <name>gui::MainWindow</name>
    <message>
        <source>%1[*] - Heat Ledger</source>
        <translation>%1[*] - Heat Ledger</translation>
    </message>
    <message>
        <source>The plan was not opened.</source>
        <translation>Der Plan wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>drag of the wanted time</source>
        <translation>Ziehen der gewünschten Zeit</translation>
    </message>
    <message>
        <source>This answers the plan as it last was without problems.</source>
        <translation>Das antwortet auf den Plan, wie er zuletzt ohne Probleme war.</translation>
    </message>
    <message>
        <source>There is no answer yet: the plan has problems.</source>
        <translation>Es gibt noch keine Antwort: Der Plan hat Probleme.</translation>
    </message>
    <message numerus="yes">
        <source>%n problem(s) in the plan</source>
        <translation>
            <numerusform>%n Problem im Plan</numerusform>
            <numerusform>%n Probleme im Plan</numerusform>
        </translation>
    </message>
    <message>
        <source>Computing</source>
        <translation>Rechnet</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Metric units</source>
        <translation>Metrische Einheiten</translation>
    </message>
    <message>
        <source>US units</source>
        <translation>US-Einheiten</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Units of every number that is shown. What you wrote stays as you wrote it.</source>
        <translation>Einheiten jeder Zahl, die gezeigt wird. Was Sie geschrieben haben, bleibt, wie Sie es geschrieben haben.</translation>
    </message>
    <message>
        <source>Plans (*.json);;All files (*)</source>
        <translation>Pläne (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Heat Ledger</source>
        <translation>Heat Ledger</translation>
    </message>
    <message>
        <source>Save the changes to %1?</source>
        <translation>Änderungen an %1 sichern?</translation>
    </message>
    <message>
        <source>Without saving, what you changed is lost.</source>
        <translation>Ohne Sichern geht verloren, was Sie geändert haben.</translation>
    </message>
    <message>
        <source>Open a plan</source>
        <translation>Einen Plan öffnen</translation>
    </message>
    <message>
        <source>Someone else changed %1.</source>
        <translation>Jemand anderes hat %1 geändert.</translation>
    </message>
    <message>
        <source>Saving replaces what now stands in the file.</source>
        <translation>Sichern ersetzt, was jetzt in der Datei steht.</translation>
    </message>
    <message>
        <source>The plan was not saved.</source>
        <translation>Der Plan wurde nicht gesichert.</translation>
    </message>
    <message>
        <source>Save the plan</source>
        <translation>Den Plan sichern</translation>
    </message>
    <message>
        <source>No plans yet</source>
        <translation>Noch keine Pläne</translation>
    </message>
    <message>
        <source>No safety copy could be kept: %1.</source>
        <translation>Es konnte keine Sicherheitskopie angelegt werden: %1.</translation>
    </message>
    <message>
        <source>%1 is no longer there. Saving writes it again.</source>
        <translation>%1 ist nicht mehr da. Sichern schreibt es neu.</translation>
    </message>
    <message>
        <source>All right</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Someone else changed %1. Loading it replaces your changes; undo brings them back.</source>
        <translation>Jemand anderes hat %1 geändert. Laden ersetzt Ihre Änderungen; Rückgängig bringt sie zurück.</translation>
    </message>
    <message>
        <source>Load the file</source>
        <translation>Datei laden</translation>
    </message>
    <message>
        <source>The plan was not loaded.</source>
        <translation>Der Plan wurde nicht geladen.</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation>Meine behalten</translation>
    </message>
    <message>
        <source>a plan that was never saved</source>
        <translation>ein Plan, der nie gesichert wurde</translation>
    </message>
    <message>
        <source>A window ended without saving %1.</source>
        <translation>Ein Fenster endete, ohne %1 zu sichern.</translation>
    </message>
    <message>
        <source>Restore it</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>The plan was not restored.</source>
        <translation>Der Plan wurde nicht wiederhergestellt.</translation>
    </message>
    <message>
        <source>Export what is seen</source>
        <translation>Exportieren, was zu sehen ist</translation>
    </message>
    <message>
        <source>Nothing was exported.</source>
        <translation>Es wurde nichts exportiert.</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Den Bericht sichern</translation>
    </message>
    <message>
        <source>PDF documents (*.pdf)</source>
        <translation>PDF-Dokumente (*.pdf)</translation>
    </message>
    <message>
        <source>The report was not saved.</source>
        <translation>Der Bericht wurde nicht gesichert.</translation>
    </message>
    <message>
        <source>Not everything was printed.</source>
        <translation>Es wurde nicht alles gedruckt.</translation>
    </message>
    <message>
        <source>The printer did not take all pages.</source>
        <translation>Der Drucker nahm nicht alle Seiten an.</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New plan from the example</source>
        <translation>&amp;Neuer Plan aus dem Beispiel</translation>
    </message>
    <message>
        <source>&amp;Open a plan ...</source>
        <translation>Plan ö&amp;ffnen ...</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Sichern</translation>
    </message>
    <message>
        <source>Save &amp;as ...</source>
        <translation>Sichern &amp;unter ...</translation>
    </message>
    <message>
        <source>&amp;Export what is seen</source>
        <translation>&amp;Exportieren, was zu sehen ist</translation>
    </message>
    <message>
        <source>Picture as P&amp;NG ...</source>
        <translation>Bild als &amp;PNG ...</translation>
    </message>
    <message>
        <source>PNG pictures (*.png)</source>
        <translation>PNG-Bilder (*.png)</translation>
    </message>
    <message>
        <source>Picture as &amp;SVG ...</source>
        <translation>Bild als &amp;SVG ...</translation>
    </message>
    <message>
        <source>SVG pictures (*.svg)</source>
        <translation>SVG-Bilder (*.svg)</translation>
    </message>
    <message>
        <source>Numbers as &amp;CSV ...</source>
        <translation>Zahlen als &amp;CSV ...</translation>
    </message>
    <message>
        <source>CSV tables (*.csv)</source>
        <translation>CSV-Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Numbers as &amp;JSON ...</source>
        <translation>Zahlen als &amp;JSON ...</translation>
    </message>
    <message>
        <source>JSON documents (*.json)</source>
        <translation>JSON-Dokumente (*.json)</translation>
    </message>
    <message>
        <source>&amp;Report as PDF ...</source>
        <translation>&amp;Bericht als PDF ...</translation>
    </message>
    <message>
        <source>&amp;Print ...</source>
        <translation>&amp;Drucken ...</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Be&amp;enden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>R&amp;igs</source>
        <translation>A&amp;nlagen</translation>
    </message>
    <message>
        <source>&amp;Add from the catalogue</source>
        <translation>Aus dem Katalog &amp;hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>&amp;Verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate with a &amp;jacket</source>
        <translation>Verdoppeln mit &amp;Mantel</translation>
    </message>
    <message>
        <source>Duplicate &amp;without a jacket</source>
        <translation>Verdoppeln &amp;ohne Mantel</translation>
    </message>
    <message>
        <source>Duplicate with a &amp;lid</source>
        <translation>Verdoppeln mit &amp;Deckel</translation>
    </message>
    <message>
        <source>Move to the le&amp;ft</source>
        <translation>Nach &amp;links rücken</translation>
    </message>
    <message>
        <source>Move to the ri&amp;ght</source>
        <translation>Nach &amp;rechts rücken</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>&amp;Metric units</source>
        <translation>&amp;Metrische Einheiten</translation>
    </message>
    <message>
        <source>&amp;US units</source>
        <translation>&amp;US-Einheiten</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;About Heat Ledger</source>
        <translation>Ü&amp;ber Heat Ledger</translation>
    </message>
    <message>
        <source>About &amp;Qt</source>
        <translation>Über &amp;Qt</translation>
    </message>
    <message>
        <source>About Heat Ledger</source>
        <translation>Über Heat Ledger</translation>
    </message>
    <message>
        <source>Heat Ledger %1</source>
        <translation>Heat Ledger %1</translation>
    </message>
    <message>
        <source>Plans a brew day with an electric kettle and accounts for every joule.

Free software under the GNU General Public License, version 3 or later. It comes without any warranty.

Made with Qt %1 (LGPL 3) and Qt Charts (GPL 3), Boost (Boost Software License), nlohmann/json (MIT), fmt (MIT) and CLI11 (3-clause BSD).</source>
        <translation>Plant einen Brautag mit einem elektrischen Kessel und verbucht jedes Joule.

Freie Software unter der GNU General Public License, Version 3 oder später. Sie kommt ohne jede Gewährleistung.

Gemacht mit Qt %1 (LGPL 3) und Qt Charts (GPL 3), Boost (Boost Software License), nlohmann/json (MIT), fmt (MIT) und CLI11 (3-Klausel-BSD).</translation>
    </message>
    <message>
        <source>Saved %1.</source>
        <translation>%1 gespeichert.</translation>
    </message>
    <message>
        <source>The first answer is still being computed.</source>
        <translation>Die erste Antwort wird noch berechnet.</translation>
    </message>
    <message>
        <source>Pictures black on &amp;white</source>
        <translation>Bilder schwarz auf &amp;weiß</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Aussehen</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
</context>
<context>
    <name>gui::PlanDocument</name>
    <message>
        <source>%1 is not a plan: %2</source>
        <translation>%1 ist kein Plan: %2</translation>
    </message>
    <message>
        <source>Untitled plan</source>
        <translation>Plan ohne Titel</translation>
    </message>
    <message>
        <source>change of units</source>
        <translation>Wechsel der Einheiten</translation>
    </message>
    <message>
        <source>reading the file again</source>
        <translation>erneutes Lesen der Datei</translation>
    </message>
</context>
<context>
    <name>gui::PlanForms</name>
    <message>
        <source>&amp;Rigs</source>
        <translation>&amp;Anlagen</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>&amp;Sud</translation>
    </message>
    <message>
        <source>&amp;Place and goals</source>
        <translation>&amp;Ort und Ziele</translation>
    </message>
    <message>
        <source>Add a rig</source>
        <translation>Anlage hinzufügen</translation>
    </message>
    <message>
        <source>Add a rig from the catalogue</source>
        <translation>Eine Anlage aus dem Katalog hinzufügen</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
</context>
<context>
    <name>gui::ProblemLabel</name>
    <message>
        <source>Remark: %1</source>
        <translation>Hinweis: %1</translation>
    </message>
    <message>
        <source>Problem: %1</source>
        <translation>Problem: %1</translation>
    </message>
</context>
<context>
    <name>gui::Report</name>
    <message>
        <source>A brew day</source>
        <translation>Ein Brautag</translation>
    </message>
    <message>
        <source>Heat Ledger %1. Planning figures, not an installation guide: heed the cautions on the first page.</source>
        <translation>Heat Ledger %1. Zahlen zur Planung, keine Installationsanleitung: Beachten Sie die Warnungen auf der ersten Seite.</translation>
    </message>
    <message>
        <source>Plan: %1</source>
        <translation>Plan: %1</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>The answers in short</source>
        <translation>Die Antworten in Kürze</translation>
    </message>
    <message>
        <source>What was put in</source>
        <translation>Was hineinging</translation>
    </message>
    <message>
        <source>What is taken for granted</source>
        <translation>Was vorausgesetzt wird</translation>
    </message>
</context>
<context>
    <name>gui::ReportInputs</name>
    <message>
        <source>Mash, left unplugged</source>
        <translation>Maische, ohne Strom gelassen</translation>
    </message>
    <message>
        <source>from %1 for %2</source>
        <translation>ab %1 für %2</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>Mash rests</source>
        <translation>Rasten</translation>
    </message>
    <message>
        <source>Finished wort, cold</source>
        <translation>Fertige Würze, kalt</translation>
    </message>
    <message>
        <source>Water poured, cold</source>
        <translation>Eingefülltes Wasser, kalt</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Malz</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>Extract from the grain</source>
        <translation>Extrakt aus dem Malz</translation>
    </message>
    <message>
        <source>Wort kept by the grain</source>
        <translation>Würze, die im Treber bleibt</translation>
    </message>
    <message>
        <source>Mashing in</source>
        <translation>Einmaischen</translation>
    </message>
    <message>
        <source>Boil</source>
        <translation>Kochen</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>%1, humidity %2</source>
        <translation>%1, Luftfeuchte %2</translation>
    </message>
    <message>
        <source>Water as drawn</source>
        <translation>Wasser aus der Leitung</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>Air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Water boils here at</source>
        <translation>Wasser kocht hier bei</translation>
    </message>
    <message>
        <source>Draught</source>
        <translation>Luftzug</translation>
    </message>
    <message>
        <source>no price stated</source>
        <translation>kein Preis genannt</translation>
    </message>
    <message>
        <source>%1 %2 per kWh</source>
        <translation>%1 %2 je kWh</translation>
    </message>
    <message>
        <source>%1, as of %2</source>
        <translation>%1, Stand %2</translation>
    </message>
    <message>
        <source>no lid</source>
        <translation>kein Deckel</translation>
    </message>
    <message>
        <source>open: strike %1, mash %2, heating %3, boil %4</source>
        <translation>offen: Einmaischwasser %1, Maische %2, Erhitzen %3, Kochen %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Batch and place</source>
        <translation>Sud und Ort</translation>
    </message>
    <message>
        <source>Price of electricity</source>
        <translation>Strompreis</translation>
    </message>
    <message>
        <source>Wanted: heating from mash to boil within</source>
        <translation>Gewünscht: von der Maische bis zum Kochen in</translation>
    </message>
    <message>
        <source>Wanted: boil-off per hour</source>
        <translation>Gewünscht: Verdampfung je Stunde</translation>
    </message>
    <message>
        <source>Wanted: headspace</source>
        <translation>Gewünscht: freier Raum im Kessel</translation>
    </message>
    <message>
        <source>Left unplugged, for the cooling question</source>
        <translation>Ohne Strom, für die Frage nach dem Abkühlen</translation>
    </message>
    <message>
        <source>Rigs</source>
        <translation>Anlagen</translation>
    </message>
    <message>
        <source>Vessel, holds</source>
        <translation>Gefäß, fasst</translation>
    </message>
    <message>
        <source>Inner diameter</source>
        <translation>Innendurchmesser</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Steht auf</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>Füßen</translation>
    </message>
    <message>
        <source>a solid base</source>
        <translation>festem Untergrund</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>Jacket</source>
        <translation>Mantel</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>Jacket it is compared with</source>
        <translation>Mantel, mit dem verglichen wird</translation>
    </message>
    <message>
        <source>Element</source>
        <translation>Heizelement</translation>
    </message>
    <message>
        <source>Its highest point above the base</source>
        <translation>Höchster Punkt über dem Boden</translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation>Stromkreis</translation>
    </message>
    <message>
        <source>Cable, there and back</source>
        <translation>Kabel, hin und zurück</translation>
    </message>
    <message>
        <source>Element&apos;s share used in the boil</source>
        <translation>Anteil des Heizelements beim Kochen</translation>
    </message>
    <message>
        <source>Factor on evaporation</source>
        <translation>Faktor auf die Verdunstung</translation>
    </message>
    <message>
        <source>The wort has one temperature throughout, and the metal it touches has the same.</source>
        <translation>Die Würze hat überall dieselbe Temperatur, und das Metall, das sie berührt, auch.</translation>
    </message>
    <message>
        <source>Outer surfaces are in balance with the heat that passes; what insulation stores is left out.</source>
        <translation>Äußere Flächen sind im Gleichgewicht mit der Wärme, die hindurchgeht; was die Dämmung speichert, ist weggelassen.</translation>
    </message>
    <message>
        <source>Evaporation from hot open wort is the largest loss and the least certain, about ±20 %.</source>
        <translation>Die Verdunstung heißer offener Würze ist der größte und unsicherste Verlust, etwa ±20 %.</translation>
    </message>
    <message>
        <source>Losses through the side are good to about ±15 % and biased low; a guessed emissivity of bare steel adds more.</source>
        <translation>Verluste durch die Wand stimmen auf etwa ±15 % und eher zu niedrig; ein geschätzter Emissionsgrad von blankem Stahl kommt hinzu.</translation>
    </message>
    <message>
        <source>Insulation has its published design values, ±10 to 30 %; damp or pressed, it is far worse.</source>
        <translation>Dämmung hat ihre veröffentlichten Bemessungswerte, ±10 bis 30 %; feucht oder gedrückt ist sie viel schlechter.</translation>
    </message>
    <message>
        <source>The supply has its nominal voltage. Real ones swing by up to ±10 %, the power by ±20 %. The element&apos;s resistance is constant.</source>
        <translation>Das Netz hat seine Nennspannung. Wirkliche schwanken um bis zu ±10 %, die Leistung um ±20 %. Der Widerstand des Heizelements ist konstant.</translation>
    </message>
    <message>
        <source>In the boil the temperature follows from air pressure and wort strength, and water leaves by the balance of heat.</source>
        <translation>Beim Kochen folgt die Temperatur aus Luftdruck und Stärke der Würze, und Wasser geht nach der Wärmebilanz davon.</translation>
    </message>
    <message>
        <source>The room stays as stated: it neither warms up nor steams up.</source>
        <translation>Der Raum bleibt, wie angegeben: Er wird weder wärmer noch feuchter.</translation>
    </message>
    <message>
        <source>Not modelled: rinse water, hops and trub, lifting the lid to stir, chilling.</source>
        <translation>Nicht berechnet: Nachgüsse, Hopfen und Trub, Öffnen des Deckels zum Rühren, Kühlen.</translation>
    </message>
    <message>
        <source>What a rig does compared with another one is better known than either alone: most errors are common to both.</source>
        <translation>Was eine Anlage im Vergleich zu einer anderen tut, ist besser bekannt als beide für sich: Die meisten Fehler sind beiden gemeinsam.</translation>
    </message>
</context>
<context>
    <name>gui::ReportPages</name>
    <message>
        <source>Page %1</source>
        <translation>Seite %1</translation>
    </message>
</context>
<context>
    <name>gui::RigColumns</name>
    <message>
        <source>Duplicate, move or remove this rig</source>
        <translation>Diese Anlage verdoppeln, verschieben oder entfernen</translation>
    </message>
    <message>
        <source>What to do with rig %1</source>
        <translation>Was mit Anlage %1 geschehen soll</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What this rig is called in every answer; different for every rig.</source>
        <translation>Wie diese Anlage in jeder Antwort heißt; für jede Anlage ein anderer Name.</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>aus %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate with a jacket</source>
        <translation>Verdoppeln mit Mantel</translation>
    </message>
    <message>
        <source>Duplicate without a jacket</source>
        <translation>Verdoppeln ohne Mantel</translation>
    </message>
    <message>
        <source>Duplicate with a lid</source>
        <translation>Verdoppeln mit Deckel</translation>
    </message>
    <message>
        <source>Move to the left</source>
        <translation>Nach links rücken</translation>
    </message>
    <message>
        <source>Move to the right</source>
        <translation>Nach rechts rücken</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>adding a rig</source>
        <translation>Hinzufügen einer Anlage</translation>
    </message>
    <message>
        <source>%1, with a jacket</source>
        <translation>%1, mit Mantel</translation>
    </message>
    <message>
        <source>%1, without a jacket</source>
        <translation>%1, ohne Mantel</translation>
    </message>
    <message>
        <source>%1, with a lid</source>
        <translation>%1, mit Deckel</translation>
    </message>
    <message>
        <source>%1, copy</source>
        <translation>%1, Kopie</translation>
    </message>
    <message>
        <source>duplicating a rig</source>
        <translation>Verdoppeln einer Anlage</translation>
    </message>
    <message>
        <source>moving a rig</source>
        <translation>Verschieben einer Anlage</translation>
    </message>
    <message>
        <source>removing a rig</source>
        <translation>Entfernen einer Anlage</translation>
    </message>
</context>
</TS>
