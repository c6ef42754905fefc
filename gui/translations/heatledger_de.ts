<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Alarms</name>
    <message>
        <source>Near the boil: stay with the kettle, open its lid and be ready to turn the power down. Foam rises fast, and it scalds.</source>
        <translation>Nahe am Kochen: Bleiben Sie beim Kessel, öffnen Sie den Deckel und halten Sie sich bereit, die Leistung zu drosseln. Schaum steigt schnell und verbrüht.</translation>
    </message>
    <message>
        <source>It may boil from %1 on: be there before, open the lid and be ready to turn the power down. Foam rises fast, and it scalds.</source>
        <translation>Ab %1 kann es kochen: Seien Sie vorher da, öffnen Sie den Deckel und halten Sie sich bereit, die Leistung zu drosseln. Schaum steigt schnell und verbrüht.</translation>
    </message>
    <message>
        <source>On %1 of such days the element is uncovered: switch it off before; dry, it burns out in seconds.</source>
        <translation>An %1 solcher Tage liegt das Heizelement frei: Schalten Sie es vorher aus; trocken brennt es in Sekunden durch.</translation>
    </message>
    <message>
        <source>On %1 of such days the element is uncovered, from %2 on: switch it off before; dry, it burns out in seconds.</source>
        <translation>An %1 solcher Tage liegt das Heizelement frei, ab %2: Schalten Sie es vorher aus; trocken brennt es in Sekunden durch.</translation>
    </message>
    <message>
        <source>The mash is below %1: wort left so for hours can sour and grow bacteria. Boil it promptly.</source>
        <translation>Die Maische liegt unter %1: Würze, die stundenlang so steht, kann sauer werden, und Bakterien wachsen darin. Kochen Sie sie zügig.</translation>
    </message>
    <message>
        <source>The mash falls below %1 between %2 and %3 (8 of 10 such nights): from then on it can sour and grow bacteria. Leave it no longer than planned, and boil it promptly.</source>
        <translation>Die Maische fällt zwischen %2 und %3 unter %1 (8 von 10 solchen Nächten): Von da an kann sie sauer werden, und Bakterien wachsen darin. Lassen Sie sie nicht länger stehen als geplant, und kochen Sie sie zügig.</translation>
    </message>
    <message>
        <source>On %1 of such nights the mash falls below %2: from then on it can sour and grow bacteria. Leave it no longer than planned, and boil it promptly.</source>
        <translation>In %1 solcher Nächte fällt die Maische unter %2: Von da an kann sie sauer werden, und Bakterien wachsen darin. Lassen Sie sie nicht länger stehen als geplant, und kochen Sie sie zügig.</translation>
    </message>
    <message>
        <source>On %1 of such days the wort never gets as hot as planned.</source>
        <translation>An %1 solcher Tage wird die Würze nie so heiß wie geplant.</translation>
    </message>
    <message>
        <source>Late by about %1: later than 9 of 10 such days before anything was read.</source>
        <translation>Etwa %1 zu spät: später als 9 von 10 solchen Tagen, bevor etwas abgelesen wurde.</translation>
    </message>
    <message>
        <source>The last reading does not fit what was expected: stir and read again, and check thermometer, unit and clock.</source>
        <translation>Die letzte Ablesung passt nicht zum Erwarteten: Rühren Sie um und lesen Sie noch einmal ab, und prüfen Sie Thermometer, Einheit und Uhr.</translation>
    </message>
    <message>
        <source>The readings do not go together, and which of them are wrong cannot be told: the ranges are wide for that.</source>
        <translation>Die Ablesungen passen nicht zusammen, und welche davon falsch sind, lässt sich nicht sagen: Die Spannen sind deshalb weit.</translation>
    </message>
    <message>
        <source>What was read last lies where the day has no such moment, so it tells nothing: is an event missing, such as &quot;heating&quot; or &quot;boil&quot;, or did something go into the boil about then?</source>
        <translation>Was zuletzt abgelesen wurde, liegt dort, wo der Tag keinen solchen Moment hat, und sagt daher nichts: Fehlt ein Ereignis, etwa „heizen“ oder „kocht“, oder kam da etwas ins Kochen hinein?</translation>
    </message>
    <message>
        <source>What was read last is %1 ahead of this clock: is its time right, or that of this clock?</source>
        <translation>Was zuletzt abgelesen wurde, ist dieser Uhr um %1 voraus: Stimmt seine Zeit, oder die dieser Uhr?</translation>
    </message>
</context>
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
        <source>from the wall</source>
        <translation>aus der Steckdose</translation>
    </message>
    <message>
        <source>from wetting the grain</source>
        <translation>vom Benetzen des Malzes</translation>
    </message>
    <message>
        <source>Nothing can be compared for %1.</source>
        <translation>Für %1 lässt sich nichts vergleichen.</translation>
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
        <source>a batch</source>
        <translation>je Sud</translation>
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
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The day, stage by stage</source>
        <translation>Der Tag, Schritt für Schritt</translation>
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
        <source>A full mash left unplugged</source>
        <translation>Eine volle Maische ohne Strom</translation>
    </message>
    <message>
        <source>Can the circuit carry it?</source>
        <translation>Trägt das der Stromkreis?</translation>
    </message>
    <message>
        <source>What happens to the room?</source>
        <translation>Was geschieht mit dem Raum?</translation>
    </message>
    <message>
        <source>How long?</source>
        <translation>Wie lange?</translation>
    </message>
    <message>
        <source>Heat to where?</source>
        <translation>Wärme wohin?</translation>
    </message>
    <message>
        <source>Boils hard enough?</source>
        <translation>Kocht es kräftig?</translation>
    </message>
    <message>
        <source>Insulate?</source>
        <translation>Dämmen?</translation>
    </message>
    <message>
        <source>Which element?</source>
        <translation>Welches Heizelement?</translation>
    </message>
    <message>
        <source>Circuit carries it?</source>
        <translation>Stromkreis reicht?</translation>
    </message>
    <message>
        <source>What cost?</source>
        <translation>Kosten?</translation>
    </message>
    <message>
        <source>Cools how far?</source>
        <translation>Kühlt wie weit?</translation>
    </message>
    <message>
        <source>The room?</source>
        <translation>Der Raum?</translation>
    </message>
    <message>
        <source>What a batch costs by the hour it begins</source>
        <translation>Was ein Sud je nach Beginn kostet</translation>
    </message>
    <message>
        <source>begun as planned</source>
        <translation>Beginn wie geplant</translation>
    </message>
    <message>
        <source>When to begin</source>
        <translation>Wann beginnen</translation>
    </message>
    <message>
        <source>cheapest start, by the clock</source>
        <translation>billigster Beginn, Uhrzeit</translation>
    </message>
    <message>
        <source>a batch begun then</source>
        <translation>ein Sud mit diesem Beginn</translation>
    </message>
    <message>
        <source>dearest start, by the clock</source>
        <translation>teuerster Beginn, Uhrzeit</translation>
    </message>
    <message>
        <source>a batch begun at that time</source>
        <translation>ein Sud mit jenem Beginn</translation>
    </message>
    <message>
        <source>A jacket for %1</source>
        <translation>Ein Mantel für %1</translation>
    </message>
    <message>
        <source>saves in a year</source>
        <translation>spart in einem Jahr</translation>
    </message>
    <message>
        <source>paid back after, years</source>
        <translation>bezahlt nach, Jahre</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>An element for %1</source>
        <translation>Ein Heizelement für %1</translation>
    </message>
    <message>
        <source>for each batch of its first year</source>
        <translation>für jeden Sud des ersten Jahres</translation>
    </message>
    <message>
        <source>paid back after, years, against the first rig that finishes</source>
        <translation>bezahlt nach, Jahre, gegenüber der ersten Anlage, die fertig wird</translation>
    </message>
    <message>
        <source>Begun at %1 instead of %2 it would cost %3 with %4; dearest is %5.</source>
        <translation>Mit Beginn um %1 statt um %2 kostete es %3 mit %4; am teuersten ist %5.</translation>
    </message>
    <message>
        <source>Price of energy: %1.</source>
        <translation>Preis der Energie: %1.</translation>
    </message>
    <message>
        <source>A brew a month is assumed: the plan does not say how many.</source>
        <translation>Angenommen ist ein Sud im Monat: Der Plan sagt nicht, wie viele es sind.</translation>
    </message>
    <message>
        <source>%1 of carbon dioxide a kWh; no source is stated.</source>
        <translation>%1 Kohlendioxid je kWh; eine Quelle ist nicht genannt.</translation>
    </message>
    <message>
        <source>%1 of carbon dioxide a kWh: %2.</source>
        <translation>%1 Kohlendioxid je kWh: %2.</translation>
    </message>
    <message>
        <source>Fixed charges are left out: a brew day does not change them.</source>
        <translation>Grundgebühren bleiben außen vor: Ein Brautag ändert sie nicht.</translation>
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
        <source>%1 begins, %2</source>
        <translation>%1 beginnt, %2</translation>
    </message>
    <message>
        <source>%1 ends, %2</source>
        <translation>%1 endet, %2</translation>
    </message>
    <message>
        <source>more than its circuit carries</source>
        <translation>mehr als sein Stromkreis trägt</translation>
    </message>
    <message>
        <source>Power written on the element, W</source>
        <translation>Leistung laut Aufdruck des Heizelements, W</translation>
    </message>
    <message>
        <source>Most its circuit carries</source>
        <translation>Das Meiste, was der Stromkreis trägt</translation>
    </message>
    <message>
        <source>and then</source>
        <translation>und dann</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <translation>%1, an %2</translation>
    </message>
    <message>
        <source>%1, %2 on %3</source>
        <translation>%1, %2 an %3</translation>
    </message>
    <message>
        <source>Time from mash to boil, with a jacket and without</source>
        <translation>Zeit von der Maische zum Kochen, mit Mantel und ohne</translation>
    </message>
    <message>
        <source>Cost of a batch, with a jacket and without</source>
        <translation>Kosten eines Suds, mit Mantel und ohne</translation>
    </message>
    <message>
        <source>Energy of a batch, with a jacket and without</source>
        <translation>Energie eines Suds, mit Mantel und ohne</translation>
    </message>
    <message>
        <source>mash done</source>
        <translation>Maischen beendet</translation>
    </message>
    <message>
        <source>strike reached</source>
        <translation>Einmaischtemperatur erreicht</translation>
    </message>
    <message>
        <source>mashed in</source>
        <translation>eingemaischt</translation>
    </message>
    <message>
        <source>rest reached</source>
        <translation>Rast erreicht</translation>
    </message>
    <message>
        <source>rest done</source>
        <translation>Rast beendet</translation>
    </message>
    <message>
        <source>Energy from the wall</source>
        <translation>Energie aus der Steckdose</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Carbon dioxide</source>
        <translation>Kohlendioxid</translation>
    </message>
    <message>
        <source>Begun at %1 it costs %2; at any hour cheapest at %3 with %4, dearest at %5 with %6.</source>
        <translation>Mit Beginn um %1 kostet es %2; zu jeder Stunde gerechnet am billigsten um %3 mit %4, am teuersten um %5 mit %6.</translation>
    </message>
    <message>
        <source>Begun at %1 it costs %2; from %3 to %4 cheapest at %5 with %6, dearest at %7 with %8.</source>
        <translation>Mit Beginn um %1 kostet es %2; von %3 bis %4 am billigsten um %5 mit %6, am teuersten um %7 mit %8.</translation>
    </message>
    <message>
        <source>Its element in place of %1&apos;s, with all else that differs, for %2 saves nothing and is never paid back.</source>
        <translation>Ihr Heizelement für %2 anstelle dessen von %1 spart, mit allem, was sich sonst unterscheidet, nichts und ist nie bezahlt.</translation>
    </message>
    <message>
        <source>Its element in place of %1&apos;s, with all else that differs, for %2 saves %3 a year and is paid back in %4 years.</source>
        <translation>Ihr Heizelement für %2 anstelle dessen von %1 spart, mit allem, was sich sonst unterscheidet, %3 im Jahr und ist in %4 Jahren bezahlt.</translation>
    </message>
    <message>
        <source>Its energy makes %1 of carbon dioxide.</source>
        <translation>Ihre Energie verursacht %1 Kohlendioxid.</translation>
    </message>
    <message>
        <source>Too little %1.</source>
        <translation>Zu wenig, um %1.</translation>
    </message>
    <message>
        <source>Too little %1; enough %2.</source>
        <translation>Zu wenig, um %1; genug, um %2.</translation>
    </message>
    <message>
        <source>On a circuit that carries it, it would be enough %1.</source>
        <translation>An einem Stromkreis, der es trägt, wäre es genug, um %1.</translation>
    </message>
    <message>
        <source>Enough %1.</source>
        <translation>Genug, um %1.</translation>
    </message>
    <message>
        <source>%1 flow through %2, and %3 through %4.</source>
        <translation>%1 fließen durch %2 und %3 durch %4.</translation>
    </message>
    <message>
        <source>%1 flow through %2, and %3 through %4; %5 stay in the cable.</source>
        <translation>%1 fließen durch %2 und %3 durch %4; %5 bleiben im Kabel.</translation>
    </message>
    <message>
        <source>%1 flow through %2.</source>
        <translation>%1 fließen durch %2.</translation>
    </message>
    <message>
        <source>%1 flow through %2; %3 stay in the cable.</source>
        <translation>%1 fließen durch %2; %3 bleiben im Kabel.</translation>
    </message>
    <message>
        <source>No element up to %1 is enough for %2 %3.</source>
        <translation>Kein Heizelement bis %1 genügt %2, um %3.</translation>
    </message>
    <message>
        <source>%1 of heat is what %2 needs %3: more than its cable can carry.</source>
        <translation>%1 Wärme braucht %2, um %3: mehr, als das Kabel bringen kann.</translation>
    </message>
    <message>
        <source>%1 at %2 is what %3 needs %4; what it has is too weak.</source>
        <translation>%1 bei %2 braucht %3, um %4; was da ist, ist zu schwach.</translation>
    </message>
    <message>
        <source>%1 at %2 is enough for %3 %4; what it has is stronger, but too much for its circuit.</source>
        <translation>%1 bei %2 genügen %3, um %4; was da ist, ist stärker, aber zu viel für den Stromkreis.</translation>
    </message>
    <message>
        <source>%1 at %2 is enough for %3 %4; what it has is stronger.</source>
        <translation>%1 bei %2 genügen %3, um %4; was da ist, ist stärker.</translation>
    </message>
    <message>
        <source>%1 reach the vessel from two elements: %2 at %3 on %4, and %5 at %6 on a second circuit of %7.</source>
        <translation>%1 kommen von zwei Heizelementen im Gefäß an: %2 bei %3 an %4, und %5 bei %6 an einem zweiten Stromkreis mit %7.</translation>
    </message>
    <message>
        <source>%1 reach the vessel, %2 of the element&apos;s %3 at %4: its supply has %5.</source>
        <translation>%1 kommen im Gefäß an, %2 der %3 des Heizelements bei %4: Das Netz hat %5.</translation>
    </message>
    <message>
        <source>%1 reach the vessel from an element of %2 on %3.</source>
        <translation>%1 kommen von einem Heizelement mit %2 an %3 im Gefäß an.</translation>
    </message>
    <message>
        <source>Its circuits carry that, in long use too.</source>
        <translation>Die Stromkreise tragen das, auch auf Dauer.</translation>
    </message>
    <message>
        <source>Its circuit carries that, in long use too.</source>
        <translation>Der Stromkreis trägt das, auch auf Dauer.</translation>
    </message>
    <message>
        <source>Its circuits carry that.</source>
        <translation>Die Stromkreise tragen das.</translation>
    </message>
    <message>
        <source>Its circuit carries that.</source>
        <translation>Der Stromkreis trägt das.</translation>
    </message>
    <message>
        <source>Its circuits carry that for short use only.</source>
        <translation>Die Stromkreise tragen das nur kurz.</translation>
    </message>
    <message>
        <source>Its circuit carries that for short use only.</source>
        <translation>Der Stromkreis trägt das nur kurz.</translation>
    </message>
    <message>
        <source>Its circuit carries that for short use only: it draws %1, and rules grant %2 to long use.</source>
        <translation>Der Stromkreis trägt das nur kurz: Es zieht %1, und Regeln lassen auf Dauer %2 zu.</translation>
    </message>
    <message>
        <source>Its circuits do not carry that.</source>
        <translation>Die Stromkreise tragen das nicht.</translation>
    </message>
    <message>
        <source>Its circuit does not carry that.</source>
        <translation>Der Stromkreis trägt das nicht.</translation>
    </message>
    <message>
        <source>No element up to %1 is enough %2.</source>
        <translation>Kein Heizelement bis %1 genügt, um %2.</translation>
    </message>
    <message>
        <source>No batch boils off %1.</source>
        <translation>Kein Sud verdampft %1.</translation>
    </message>
    <message>
        <source>No batch of any size boils.</source>
        <translation>Kein Sud, wie klein auch immer, kocht.</translation>
    </message>
    <message>
        <source>Not even the smallest batch that covers the element fits the vessel.</source>
        <translation>Nicht einmal der kleinste Sud, der das Heizelement bedeckt, passt ins Gefäß.</translation>
    </message>
    <message>
        <source>%1 is the largest batch: more would leave less than %2 of the vessel free.</source>
        <translation>%1 ist der größte Sud: Mehr ließe weniger als %2 des Gefäßes frei.</translation>
    </message>
    <message>
        <source>%1 is the largest batch: more would boil off less than %2.</source>
        <translation>%1 ist der größte Sud: Mehr verdampfte weniger als %2.</translation>
    </message>
    <message>
        <source>%1 is the largest batch: more would not boil.</source>
        <translation>%1 ist der größte Sud: Mehr würde nicht kochen.</translation>
    </message>
    <message>
        <source>%1 is the largest batch; the limit: %2.</source>
        <translation>%1 ist der größte Sud; die Grenze: %2.</translation>
    </message>
    <message>
        <source>%1 is the most a lid gives it, even over the whole mouth.</source>
        <translation>%1 ist das Höchste, was ein Deckel ihm gibt, selbst über der ganzen Öffnung.</translation>
    </message>
    <message>
        <source>%1 with a jacket (%2): not enough.</source>
        <translation>%1 mit einem Mantel (%2): nicht genug.</translation>
    </message>
    <message>
        <source>What does the element really deliver?</source>
        <translation>Was leistet das Heizelement wirklich?</translation>
    </message>
    <message>
        <source>What would it take?</source>
        <translation>Was wäre nötig?</translation>
    </message>
    <message>
        <source>to be at the boil within %1</source>
        <translation>bis zum Kochen in %1</translation>
    </message>
    <message>
        <source>no power does</source>
        <translation>keine Leistung genügt</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>short use</source>
        <translation>nur kurz</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>at the element&apos;s terminals</source>
        <translation>an den Anschlüssen des Heizelements</translation>
    </message>
    <message>
        <source>lost in the cable</source>
        <translation>im Kabel verloren</translation>
    </message>
    <message>
        <source>Heat needed into the vessel</source>
        <translation>Nötige Wärme im Gefäß</translation>
    </message>
    <message>
        <source>Element needed, rated at the supply</source>
        <translation>Nötiges Heizelement, Nennleistung am Netz</translation>
    </message>
    <message>
        <source>The circuit carries that</source>
        <translation>Der Stromkreis trägt das</translation>
    </message>
    <message>
        <source>heat into the vessel</source>
        <translation>Wärme im Gefäß</translation>
    </message>
    <message>
        <source>element rated at the supply</source>
        <translation>Heizelement, bei Netzspannung</translation>
    </message>
    <message>
        <source>the same, rated as its own is</source>
        <translation>dasselbe, bei der Nennspannung des eigenen</translation>
    </message>
    <message>
        <source>from mash to boil with that</source>
        <translation>damit von der Maische zum Kochen</translation>
    </message>
    <message>
        <source>for three hours or longer, rated at the supply</source>
        <translation>für drei Stunden oder länger, bei Netzspannung</translation>
    </message>
    <message>
        <source>Largest batch, %1 and %2 of the vessel free</source>
        <translation>Größter Sud, mit %1 und %2 des Gefäßes frei</translation>
    </message>
    <message>
        <source>with this element</source>
        <translation>mit diesem Heizelement</translation>
    </message>
    <message>
        <source>stopped by</source>
        <translation>begrenzt durch</translation>
    </message>
    <message>
        <source>with the circuit&apos;s strongest element</source>
        <translation>mit dem stärksten Heizelement des Stromkreises</translation>
    </message>
    <message>
        <source>that one stopped by</source>
        <translation>dieser begrenzt durch</translation>
    </message>
    <message>
        <source>%1 longer than %2 from mash to boil</source>
        <translation>%1 länger als %2 von der Maische bis zum Kochen</translation>
    </message>
    <message>
        <source>%1 of %2 saved from mash to boil</source>
        <translation>%1 von %2 gespart von der Maische bis zum Kochen</translation>
    </message>
    <message>
        <source>%1 longer than %2 to strike</source>
        <translation>%1 länger als %2 bis zum Einmaischen</translation>
    </message>
    <message>
        <source>%1 of %2 saved to strike</source>
        <translation>%1 von %2 gespart bis zum Einmaischen</translation>
    </message>
    <message>
        <source>%1 less lost at %2</source>
        <translation>%1 weniger verloren bei %2</translation>
    </message>
    <message>
        <source>%1 more lost at %2</source>
        <translation>%1 mehr verloren bei %2</translation>
    </message>
    <message>
        <source>%1 less from the wall</source>
        <translation>%1 weniger aus der Steckdose</translation>
    </message>
    <message>
        <source>%1 more from the wall</source>
        <translation>%1 mehr aus der Steckdose</translation>
    </message>
    <message>
        <source>bare, it stops at %1 on the way to strike</source>
        <translation>ohne Mantel bleibt es bei %1 auf dem Weg zum Einmaischen stehen</translation>
    </message>
    <message>
        <source>bare, it stops at %1 on the way to the next rest</source>
        <translation>ohne Mantel bleibt es bei %1 auf dem Weg zur nächsten Rast stehen</translation>
    </message>
    <message>
        <source>with the jacket it stops at %1 on the way to strike</source>
        <translation>mit Mantel bleibt es bei %1 auf dem Weg zum Einmaischen stehen</translation>
    </message>
    <message>
        <source>with the jacket it stops at %1 on the way to the next rest</source>
        <translation>mit Mantel bleibt es bei %1 auf dem Weg zur nächsten Rast stehen</translation>
    </message>
    <message>
        <source>with the jacket it reaches strike in %2, and stops at %1 on the way to the next rest</source>
        <translation>mit Mantel erreicht es das Einmaischen in %2 und bleibt bei %1 auf dem Weg zur nächsten Rast stehen</translation>
    </message>
    <message>
        <source>It gets further: %1; %2.</source>
        <translation>Es kommt weiter: %1; %2.</translation>
    </message>
    <message>
        <source>It still does not boil: it stops at %1 on the way to strike.</source>
        <translation>Es kocht trotzdem nicht: Es bleibt bei %1 auf dem Weg zum Einmaischen stehen.</translation>
    </message>
    <message>
        <source>It still does not boil: it stops at %1 on the way to the next rest.</source>
        <translation>Es kocht trotzdem nicht: Es bleibt bei %1 auf dem Weg zur nächsten Rast stehen.</translation>
    </message>
    <message>
        <source>It still cannot hold the boil: it falls back to %1.</source>
        <translation>Es kann das Kochen trotzdem nicht halten: Es fällt auf %1 zurück.</translation>
    </message>
    <message>
        <source>bare metal</source>
        <translation>blankes Metall</translation>
    </message>
    <message>
        <source>metal of emissivity %1</source>
        <translation>Metall mit Emissionsgrad %1</translation>
    </message>
    <message>
        <source>%1 metal</source>
        <translation>Metall (%1)</translation>
    </message>
    <message>
        <source>its outside</source>
        <translation>die Außenseite</translation>
    </message>
    <message>
        <source>its outside (emissivity %1)</source>
        <translation>die Außenseite (Emissionsgrad %1)</translation>
    </message>
    <message>
        <source>its outside (%1)</source>
        <translation>die Außenseite (%1)</translation>
    </message>
    <message>
        <source>the bare side loses only %1 of the element&apos;s %2</source>
        <translation>die Wand ohne Mantel verliert nur %1 der %2 des Heizelements</translation>
    </message>
    <message>
        <source>with the jacket the side loses more than without, for %1 radiates more than %2</source>
        <translation>mit Mantel verliert die Wand mehr als ohne, denn %1 strahlt mehr als %2</translation>
    </message>
    <message>
        <source>the jacket saves only %3 of what the side loses, for %1 radiates more than %2</source>
        <translation>der Mantel spart nur %3 von dem, was die Wand verliert, denn %1 strahlt mehr als %2</translation>
    </message>
    <message>
        <source>of the %1 lost at the boil most leaves by the open surface</source>
        <translation>von den %1, die beim Kochen verloren gehen, geht das meiste durch die offene Oberfläche</translation>
    </message>
    <message>
        <source>saved of the side&apos;s own loss</source>
        <translation>gespart vom Verlust der Wand allein</translation>
    </message>
    <message>
        <source>Boil-off</source>
        <translation>Verdampfung</translation>
    </message>
    <message>
        <source>From the wall, whole day</source>
        <translation>Aus der Steckdose, ganzer Tag</translation>
    </message>
    <message>
        <source>Cost of a batch</source>
        <translation>Kosten eines Suds</translation>
    </message>
    <message>
        <source>To strike</source>
        <translation>Bis zum Einmaischen</translation>
    </message>
    <message>
        <source>From mash to boil</source>
        <translation>Von der Maische bis zum Kochen</translation>
    </message>
    <message>
        <source>Losses at the mash temperature</source>
        <translation>Verluste bei der Maischtemperatur</translation>
    </message>
    <message>
        <source>Losses at the boil</source>
        <translation>Verluste beim Kochen</translation>
    </message>
    <message>
        <source>No jacket to compare: the plan gives it none.</source>
        <translation>Kein Mantel zum Vergleichen: Der Plan nennt keinen.</translation>
    </message>
    <message>
        <source>To compare one, give the plan a jacket, for example %1; &quot;%2&quot; shows what it may be made of.</source>
        <translation>Um einen zu vergleichen, geben Sie dem Plan einen Mantel, zum Beispiel %1; „%2“ zeigt, woraus er bestehen kann.</translation>
    </message>
    <message>
        <source>What is compared</source>
        <translation>Was verglichen wird</translation>
    </message>
    <message>
        <source>It makes the boil possible: bare, the day does not come to its end.</source>
        <translation>Damit wird das Kochen möglich: Ohne Mantel kommt der Tag nicht zu Ende.</translation>
    </message>
    <message>
        <source>It makes the boil possible: bare, the wort levels off at %1.</source>
        <translation>Damit wird das Kochen möglich: Ohne Mantel bleibt die Würze bei %1 stehen.</translation>
    </message>
    <message>
        <source>Worth it: %1 of the time from mash to boil.</source>
        <translation>Es lohnt sich: %1 der Zeit von der Maische bis zum Kochen.</translation>
    </message>
    <message>
        <source>Worth it for the time to strike.</source>
        <translation>Es lohnt sich für die Zeit bis zum Einmaischen.</translation>
    </message>
    <message>
        <source>But %1 instead of %2 after %3 unplugged.</source>
        <translation>Aber %1 statt %2 nach %3 ohne Strom.</translation>
    </message>
    <message>
        <source>%1 before the boil make %2 in the end, from a gravity of %3 to %4.</source>
        <translation>%1 vor dem Kochen geben am Ende %2, von einer Dichte von %3 auf %4.</translation>
    </message>
    <message>
        <source>Of the volume before the boil: a simmer is less than %1, a gentle boil less than %2, a steady boil less than %3, a strong boil less than %4, a fierce boil more.</source>
        <translation>Vom Volumen vor dem Kochen: Weniger als %1 ist ein Simmern, weniger als %2 ein sanftes Kochen, weniger als %3 ein stetiges, weniger als %4 ein kräftiges, mehr ein heftiges Kochen.</translation>
    </message>
    <message>
        <source>Published ranges: %1 to %2 is best practice for breweries in the EU (Joint Research Centre, Best environmental management practice: food and beverage); %3 to %4 is common in small open kettles.</source>
        <translation>Veröffentlichte Bereiche: %1 bis %2 sind beste Praxis für Brauereien in der EU (Joint Research Centre, Best environmental management practice: food and beverage); %3 bis %4 sind in kleinen offenen Kesseln üblich.</translation>
    </message>
    <message>
        <source>What boils off follows from the heat left over; whether it boils at all also from the law of the open surface, which scatters by about %1.</source>
        <translation>Was verdampft, folgt aus der Wärme, die übrig bleibt; ob es überhaupt kocht, auch aus dem Gesetz der offenen Oberfläche, das um etwa %1 streut.</translation>
    </message>
    <message>
        <source>%1 boils off, %2: %3.</source>
        <translation>%1 verdampfen, %2: %3.</translation>
    </message>
    <message>
        <source>%1 at %2 is enough for %3 %4; what it has is stronger, but too much for one of its circuits at least.</source>
        <translation>%1 bei %2 genügen %3, um %4; was da ist, ist stärker, aber zu viel für mindestens einen der Stromkreise.</translation>
    </message>
    <message>
        <source>surface, to the air</source>
        <translation>Oberfläche, an die Luft</translation>
    </message>
    <message>
        <source>surface, radiated</source>
        <translation>Oberfläche, gestrahlt</translation>
    </message>
    <message>
        <source>evaporation</source>
        <translation>Verdampfung</translation>
    </message>
    <message>
        <source>a simmer</source>
        <translation>ein Simmern</translation>
    </message>
    <message>
        <source>a gentle boil</source>
        <translation>ein sanftes Kochen</translation>
    </message>
    <message>
        <source>a steady boil</source>
        <translation>ein stetiges Kochen</translation>
    </message>
    <message>
        <source>a strong boil</source>
        <translation>ein kräftiges Kochen</translation>
    </message>
    <message>
        <source>a fierce boil</source>
        <translation>ein heftiges Kochen</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>Stromkreis</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>Gefäß</translation>
    </message>
    <message>
        <source>boil-off</source>
        <translation>Verdampfung</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>zu klein</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Does not reach the strike temperature. %1 is where it levels off, short of %2: at %2 it would lose %3 and gets %4.</source>
        <translation>Erreicht die Einmaischtemperatur nicht. Bei %1 bleibt es stehen, unter %2: Bei %2 gingen %3 verloren, und %4 kommen an.</translation>
    </message>
    <message>
        <source>Does not reach the next rest. %1 is where it levels off, short of %2: at %2 it would lose %3 and gets %4.</source>
        <translation>Erreicht die nächste Rast nicht. Bei %1 bleibt es stehen, unter %2: Bei %2 gingen %3 verloren, und %4 kommen an.</translation>
    </message>
    <message>
        <source>Uncovers its element: %1 is left when the day stops here.</source>
        <translation>Das Heizelement liegt frei: %1 sind noch übrig, wenn der Tag hier endet.</translation>
    </message>
    <message>
        <source>%1 would be needed to strike: the water would have to boil. Use more water, less grain, or warmer grain.</source>
        <translation>%1 wären zum Einmaischen nötig: Das Wasser müsste kochen. Nehmen Sie mehr Wasser, weniger Malz oder wärmeres Malz.</translation>
    </message>
    <message>
        <source>Does not finish its day.</source>
        <translation>Bringt den Tag nicht zu Ende.</translation>
    </message>
    <message>
        <source>%1 are spent by then.</source>
        <translation>%1 sind bis dahin verbraucht.</translation>
    </message>
    <message>
        <source>%1 and %2 are spent by then.</source>
        <translation>%1 und %2 sind bis dahin ausgegeben.</translation>
    </message>
    <message>
        <source>%1 from the wall; no price was given.</source>
        <translation>%1 aus der Steckdose; ein Preis ist nicht angegeben.</translation>
    </message>
    <message>
        <source>%1 for %2 from the wall.</source>
        <translation>%1 für %2 aus der Steckdose.</translation>
    </message>
    <message>
        <source>%1 for %2 from the wall, %3/%4.</source>
        <translation>%1 für %2 aus der Steckdose, %3/%4.</translation>
    </message>
    <message>
        <source>second element, rated</source>
        <translation>zweites Heizelement, Nennleistung</translation>
    </message>
    <message>
        <source>its circuit</source>
        <translation>sein Stromkreis</translation>
    </message>
    <message>
        <source>its current</source>
        <translation>sein Strom</translation>
    </message>
    <message>
        <source>Element</source>
        <translation>Heizelement</translation>
    </message>
    <message>
        <source>element rated</source>
        <translation>Heizelement, Nennleistung</translation>
    </message>
    <message>
        <source>rated at</source>
        <translation>Nennspannung</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>Netz</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>reaches the vessel</source>
        <translation>kommt im Gefäß an</translation>
    </message>
    <message>
        <source>least to boil</source>
        <translation>mindestens zum Kochen</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>to strike</source>
        <translation>bis zum Einmaischen</translation>
    </message>
    <message>
        <source>over at, begun %1</source>
        <translation>zu Ende um, Beginn %1</translation>
    </message>
    <message>
        <source>Wort, volumes at %1</source>
        <translation>Würze, Volumen bei %1</translation>
    </message>
    <message>
        <source>water poured</source>
        <translation>Wasser eingefüllt</translation>
    </message>
    <message>
        <source>before the boil</source>
        <translation>vor dem Kochen</translation>
    </message>
    <message>
        <source>in the end</source>
        <translation>am Ende</translation>
    </message>
    <message>
        <source>gravity before the boil</source>
        <translation>Dichte vor dem Kochen</translation>
    </message>
    <message>
        <source>gravity in the end</source>
        <translation>Dichte am Ende</translation>
    </message>
    <message>
        <source>wort</source>
        <translation>Würze</translation>
    </message>
    <message>
        <source>levels off at</source>
        <translation>bleibt stehen bei</translation>
    </message>
    <message>
        <source>boil-off by volume, cold</source>
        <translation>Verdampfung als Volumen, kalt</translation>
    </message>
    <message>
        <source>boil-off by weight</source>
        <translation>Verdampfung als Masse</translation>
    </message>
    <message>
        <source>net heat into the boil</source>
        <translation>Wärme, die dem Kochen bleibt</translation>
    </message>
    <message>
        <source>net heat by volume</source>
        <translation>dieselbe je Volumen</translation>
    </message>
    <message>
        <source>From the wall</source>
        <translation>Aus der Steckdose</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>cost of the wort</source>
        <translation>Kosten der Würze</translation>
    </message>
    <message>
        <source>Where the heat is in the end</source>
        <translation>Wo die Wärme am Ende ist</translation>
    </message>
    <message>
        <source>in the wort</source>
        <translation>in der Würze</translation>
    </message>
    <message>
        <source>in the grain</source>
        <translation>im Malz</translation>
    </message>
    <message>
        <source>in the vessel</source>
        <translation>im Gefäß</translation>
    </message>
    <message>
        <source>steam, evaporation</source>
        <translation>Dampf, Verdampfung</translation>
    </message>
    <message>
        <source>steam, its own heat</source>
        <translation>Dampf, eigene Wärme</translation>
    </message>
    <message>
        <source>lost: %1</source>
        <translation>verloren: %1</translation>
    </message>
    <message>
        <source>in the cable</source>
        <translation>im Kabel</translation>
    </message>
    <message>
        <source>unaccounted for, share</source>
        <translation>ohne Nachweis, Anteil</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Dauert</translation>
    </message>
    <message>
        <source>%1 from %2 to %3.</source>
        <translation>%1 von %2 bis %3.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Came in</source>
        <translation>Kam hinein</translation>
    </message>
    <message>
        <source>of that, in the cable</source>
        <translation>davon im Kabel</translation>
    </message>
    <message>
        <source>Stored</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>Left the vessel</source>
        <translation>Verließ das Gefäß</translation>
    </message>
    <message>
        <source>Unaccounted for</source>
        <translation>Ohne Nachweis</translation>
    </message>
    <message>
        <source>begins</source>
        <translation>beginnt</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>endet</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>dauert</translation>
    </message>
    <message>
        <source>wort, first</source>
        <translation>Würze, zuerst</translation>
    </message>
    <message>
        <source>wort, last</source>
        <translation>Würze, zuletzt</translation>
    </message>
    <message>
        <source>volume, hot</source>
        <translation>Volumen, heiß</translation>
    </message>
    <message>
        <source>evaporated</source>
        <translation>verdampft</translation>
    </message>
    <message>
        <source>costs</source>
        <translation>kostet</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>%1 came in, %2 is accounted for: a gap of %3 of what came in; %4 in the worst stage. The ledger closes.</source>
        <translation>%1 kamen hinein, %2 sind nachgewiesen: eine Lücke von %3 dessen, was hineinkam; %4 im schlechtesten Schritt. Die Bilanz geht auf.</translation>
    </message>
    <message>
        <source>%1 came in, %2 is accounted for: a gap of %3 of what came in; %4 in the worst stage. That is more than 1e-06: do not trust this day.</source>
        <translation>%1 kamen hinein, %2 sind nachgewiesen: eine Lücke von %3 dessen, was hineinkam; %4 im schlechtesten Schritt. Das ist mehr als 1e-06: Vertrauen Sie diesem Tag nicht.</translation>
    </message>
    <message>
        <source>A brew day</source>
        <translation>Ein Brautag</translation>
    </message>
    <message>
        <source>%1 of finished wort</source>
        <translation>%1 fertige Würze</translation>
    </message>
    <message>
        <source>%1 of finished wort with %2 of grain</source>
        <translation>%1 fertige Würze mit %2 Malz</translation>
    </message>
    <message>
        <source>%1 of water poured</source>
        <translation>%1 eingefülltes Wasser</translation>
    </message>
    <message>
        <source>%1 of water poured with %2 of grain</source>
        <translation>%1 eingefülltes Wasser mit %2 Malz</translation>
    </message>
    <message>
        <source>mashed from %1 for %2 unplugged</source>
        <translation>gemaischt ab %1 für %2 ohne Strom</translation>
    </message>
    <message>
        <source>mashed at %1</source>
        <translation>gemaischt bei %1</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>boiled %1</source>
        <translation>gekocht %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Room %1, water %2; water boils at %3 here.</source>
        <translation>Raum %1, Wasser %2; Wasser kocht hier bei %3.</translation>
    </message>
    <message>
        <source>Room %1, water %2, altitude %3; water boils at %4 here.</source>
        <translation>Raum %1, Wasser %2, Höhe %3; Wasser kocht hier bei %4.</translation>
    </message>
    <message>
        <source>No jacket to compare.</source>
        <translation>Kein Mantel zum Vergleichen.</translation>
    </message>
    <message>
        <source>Which element does the supply need?</source>
        <translation>Welches Heizelement braucht das Netz?</translation>
    </message>
    <message>
        <source>Does insulation shorten the heat-up?</source>
        <translation>Verkürzt Dämmung das Aufheizen?</translation>
    </message>
    <message>
        <source>How much boils off, and what does a batch cost?</source>
        <translation>Wie viel verdampft, und was kostet ein Sud?</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Mains current kills. These figures are for planning only.</source>
        <translation>Netzstrom tötet. Diese Zahlen dienen nur der Planung.</translation>
    </message>
    <message>
        <source>%1 from %2 to %3: %4.</source>
        <translation>%1 von %2 bis %3: %4.</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>weniger als %1</translation>
    </message>
    <message>
        <source>It comes to %2 with the lid as it is for heating, but in the boil it would lose %3 there and gets %4: it falls back towards %1.</source>
        <translation>Mit dem Deckel wie beim Aufheizen kommt es auf %2, doch beim Kochen gingen dort %3 verloren, und %4 kommen an: Es fällt zurück, auf %1 zu.</translation>
    </message>
    <message>
        <source>%1 is where it levels off, %5 below boiling: at %2 it would lose %3 and gets %4.</source>
        <translation>Bei %1 bleibt es stehen, %5 unter dem Siedepunkt: Bei %2 gingen %3 verloren, und %4 kommen an.</translation>
    </message>
    <message>
        <source>%1 is where it levels off, %5 below boiling: at %2 it would lose %3 and gets %4. Its surface evaporates almost as much as if it rolled.</source>
        <translation>Bei %1 bleibt es stehen, %5 unter dem Siedepunkt: Bei %2 gingen %3 verloren, und %4 kommen an. Die Oberfläche verdunstet fast so viel, als wallte es.</translation>
    </message>
    <message>
        <source>As its level falls it comes to roll, for the last %1.</source>
        <translation>Mit sinkendem Stand kommt es ins Wallen, für die letzten %1.</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>wallt</translation>
    </message>
    <message>
        <source>steams</source>
        <translation>dampft nur</translation>
    </message>
    <message>
        <source>It steams without rolling.</source>
        <translation>Es dampft, ohne zu wallen.</translation>
    </message>
    <message>
        <source>It stays far below boiling.</source>
        <translation>Es bleibt weit unter dem Siedepunkt.</translation>
    </message>
    <message>
        <source>%3 is what %2 comes to with the lid as it is for heating, but it steams without rolling: in the boil it would lose %4 there and gets %5, and falls back towards %1.</source>
        <translation>%3 erreicht %2 mit dem Deckel wie beim Aufheizen, dampft dann aber, ohne zu wallen: Beim Kochen gingen dort %4 verloren, und %5 kommen an; es fällt zurück, auf %1 zu.</translation>
    </message>
    <message>
        <source>%1 is where %2 levels off: it steams without rolling, since at %3 it would lose %4 and gets %5.</source>
        <translation>Bei %1 bleibt %2 stehen: Es dampft, ohne zu wallen, denn bei %3 gingen %4 verloren, und %5 kommen an.</translation>
    </message>
    <message>
        <source>%3 is what %2 comes to with the lid as it is for heating, but in the boil it would lose %4 there and gets %5, and falls far below, towards %1.</source>
        <translation>%3 erreicht %2 mit dem Deckel wie beim Aufheizen, doch beim Kochen gingen dort %4 verloren, und %5 kommen an; es fällt weit darunter, auf %1 zu.</translation>
    </message>
    <message>
        <source>%1 is where %2 levels off, far below boiling: at %3 it would lose %4 and gets %5.</source>
        <translation>Bei %1 bleibt %2 stehen, weit unter dem Siedepunkt: Bei %3 gingen %4 verloren, und %5 kommen an.</translation>
    </message>
    <message>
        <source>with the water for it the element would stand dry</source>
        <translation>mit dem Wasser dafür stünde das Heizelement trocken</translation>
    </message>
    <message>
        <source>with so little water the strike would have to boil</source>
        <translation>mit so wenig Wasser müsste das Einmaischwasser kochen</translation>
    </message>
    <message>
        <source>with the water for it the mash would not get warm enough</source>
        <translation>mit dem Wasser dafür würde die Maische nicht warm genug</translation>
    </message>
    <message>
        <source>no amount of water leaves it</source>
        <translation>keine Wassermenge lässt so viel übrig</translation>
    </message>
    <message>
        <source>%1 evaporate, %2, without rolling.</source>
        <translation>%1 verdunsten, %2, ohne zu wallen.</translation>
    </message>
    <message>
        <source>%1 of the wanted wort are missing: %2.</source>
        <translation>Von der gewünschten Würze fehlen %1: %2.</translation>
    </message>
    <message>
        <source>%1 more than the wanted wort are left: %2.</source>
        <translation>Es bleiben %1 mehr als die gewünschte Würze: %2.</translation>
    </message>
    <message>
        <source>%1, on the edge</source>
        <translation>%1, auf der Kippe</translation>
    </message>
    <message>
        <source>when the grain is lifted</source>
        <translation>beim Herausheben des Malzes</translation>
    </message>
    <message>
        <source>That is on the edge: it gets %1, and since the law of the open surface is good to about %4 only, %2 may be enough to roll, and %3 may be needed.</source>
        <translation>Das steht auf der Kippe: %1 kommen an, und da das Gesetz der offenen Oberfläche nur auf etwa %4 stimmt, genügen zum Wallen vielleicht %2, und vielleicht sind %3 nötig.</translation>
    </message>
    <message>
        <source>%1 into the vessel is the least that makes it roll.</source>
        <translation>%1 im Gefäß sind das Mindeste, womit es wallt.</translation>
    </message>
    <message>
        <source>%1 into the vessel is the least that makes it roll: an element rated %2 at %3.</source>
        <translation>%1 im Gefäß sind das Mindeste, womit es wallt: ein Heizelement mit %2 bei %3.</translation>
    </message>
    <message>
        <source>%1 into the vessel is the least that makes it roll: an element rated %2 at %3 (%4 at %5).</source>
        <translation>%1 im Gefäß sind das Mindeste, womit es wallt: ein Heizelement mit %2 bei %3 (%4 bei %5).</translation>
    </message>
    <message>
        <source>No element would make it roll.</source>
        <translation>Mit keinem Heizelement wallt es.</translation>
    </message>
    <message>
        <source>%1 of the mouth open at most would make it roll: a lid that far over the kettle, but never shut.</source>
        <translation>Mit höchstens %1 freier Öffnung wallt es: ein so weit aufgelegter, aber nie ganz geschlossener Deckel.</translation>
    </message>
    <message>
        <source>A jacket would make it roll: %1.</source>
        <translation>Mit einem Mantel wallt es: %1.</translation>
    </message>
    <message>
        <source>%1 at %2 is what %3 needs %4; what it has is on the edge of rolling.</source>
        <translation>%1 bei %2 braucht %3, um %4; was da ist, steht beim Wallen auf der Kippe.</translation>
    </message>
    <message>
        <source>It cannot hold the boil.</source>
        <translation>Es kann das Kochen nicht halten.</translation>
    </message>
    <message>
        <source>Rules grant it no more than %1 in long use.</source>
        <translation>Auf Dauer lassen Regeln nicht mehr als %1 zu.</translation>
    </message>
    <message>
        <source>%1 at %2 is enough for %3 %4; what it has is stronger, and on the edge of one of its circuits at least.</source>
        <translation>%1 bei %2 genügen %3, um %4; was da ist, ist stärker und bei mindestens einem der Stromkreise an der Grenze.</translation>
    </message>
    <message>
        <source>%1 at %2 is enough for %3 %4; what it has is stronger, and on the edge of its circuit.</source>
        <translation>%1 bei %2 genügen %3, um %4; was da ist, ist stärker und für den Stromkreis an der Grenze.</translation>
    </message>
    <message>
        <source>Time since the start</source>
        <translation>Zeit seit dem Beginn</translation>
    </message>
    <message>
        <source>Start of the day</source>
        <translation>Beginn des Tages</translation>
    </message>
    <message>
        <source>Time left alone</source>
        <translation>Zeit ohne Strom</translation>
    </message>
    <message>
        <source>%1 a batch; thin: supposed</source>
        <translation>%1 je Sud; dünn: angenommen</translation>
    </message>
    <message>
        <source>%1 after %2 unplugged, from %3.</source>
        <translation>%1 nach %2 ohne Strom, von %3 an.</translation>
    </message>
    <message>
        <source>%1 after %3 unplugged is where %2 comes to, the coldest.</source>
        <translation>%1 nach %3 ohne Strom: So weit kühlt %2 ab, am weitesten.</translation>
    </message>
    <message>
        <source>%1 after %3 unplugged is where %2 comes to.</source>
        <translation>%1 nach %3 ohne Strom: So weit kühlt %2 ab.</translation>
    </message>
    <message>
        <source>%1 after %3 with %2, the warmest.</source>
        <translation>%1 nach %3 mit %2, am wärmsten.</translation>
    </message>
    <message>
        <source>%1 is as far as %2 gets with the jacket it has: it still does not boil.</source>
        <translation>Bis %1 kommt %2 mit dem eigenen Mantel: es kocht trotzdem nicht.</translation>
    </message>
    <message>
        <source>%1 is as far as %2 would get if it had %3: it still would not boil.</source>
        <translation>Bis %1 käme %2 mit angenommenem Mantel (%3): es würde trotzdem nicht kochen.</translation>
    </message>
    <message>
        <source>%1 more from mash to boil and %2 more a batch is what %4 costs with %3: not worth it.</source>
        <translation>%1 mehr von der Maische bis zum Kochen und %2 mehr je Sud kostet %4 mit %3: Er lohnt sich nicht.</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>%1 only boils with the jacket it has.</source>
        <translation>%1 kocht nur mit dem eigenen Mantel.</translation>
    </message>
    <message>
        <source>%1 would only boil if it had %2.</source>
        <translation>%1 würde nur mit angenommenem Mantel (%2) kochen.</translation>
    </message>
    <message>
        <source>%1: %2 after %3 unplugged, from %4.</source>
        <translation>%1: %2 nach %3 ohne Strom, von %4 an.</translation>
    </message>
    <message>
        <source>As it is, bare, and as if it had a jacket: %1.</source>
        <translation>Wie es ist, ohne Mantel, und als ob es einen Mantel hätte: %1.</translation>
    </message>
    <message>
        <source>As it is, with its jacket (%1), and as if it were bare.</source>
        <translation>Wie es ist, mit seinem Mantel (%1), und als ob es keinen hätte.</translation>
    </message>
    <message>
        <source>From there it heats to the boil in %1.</source>
        <translation>Von dort heizt es in %1 bis zum Kochen.</translation>
    </message>
    <message>
        <source>Hot holding</source>
        <translation>Heiß halten</translation>
    </message>
    <message>
        <source>If it had %1: %2.</source>
        <translation>Mit angenommenem Mantel (%1): %2.</translation>
    </message>
    <message>
        <source>If it had %2: a jacket for %1 would save nothing and never be paid back.</source>
        <translation>Mit angenommenem Mantel (%2): Für %1 würde er nichts sparen und wäre nie bezahlt.</translation>
    </message>
    <message>
        <source>If it had %4: a jacket for %1 would save %2 a year and be paid back in %3 years.</source>
        <translation>Mit angenommenem Mantel (%4): Für %1 würde er %2 im Jahr sparen und wäre in %3 Jahren bezahlt.</translation>
    </message>
    <message>
        <source>It is below %1 for %2.</source>
        <translation>Die Maische ist %2 lang unter %1.</translation>
    </message>
    <message>
        <source>It passes %1 after %2 and is below it for %3.</source>
        <translation>Nach %2 unterschreitet die Maische %1 und ist %3 lang darunter.</translation>
    </message>
    <message>
        <source>It stays above %1.</source>
        <translation>Die Maische bleibt über %1.</translation>
    </message>
    <message>
        <source>Its jacket (%1): %2.</source>
        <translation>Sein Mantel (%1): %2.</translation>
    </message>
    <message>
        <source>Its jacket (%2) for %1 saves nothing and is never paid back.</source>
        <translation>Sein Mantel (%2) für %1 spart nichts und ist nie bezahlt.</translation>
    </message>
    <message>
        <source>Its jacket (%4) for %1 saves %2 a year and is paid back in %3 years.</source>
        <translation>Sein Mantel (%4) für %1 spart %2 im Jahr und ist in %3 Jahren bezahlt.</translation>
    </message>
    <message>
        <source>Minutes from mash to boil; thin: supposed</source>
        <translation>Minuten von der Maische zum Kochen; dünn: angenommen</translation>
    </message>
    <message>
        <source>Minutes to strike; dotted: what a circuit carries</source>
        <translation>Minuten bis zum Einmaischen; gepunktet: was ein Stromkreis trägt</translation>
    </message>
    <message>
        <source>No rig of this plan has a mash that could be left alone.</source>
        <translation>Keine Anlage dieses Plans hat eine Maische, die allein bleiben könnte.</translation>
    </message>
    <message>
        <source>Supposed: %1</source>
        <translation>Nur angenommen: %1</translation>
    </message>
    <message>
        <source>The mash while it is left alone</source>
        <translation>Die Maische, während sie allein ist</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Time to strike against element power</source>
        <translation>Zeit bis zum Einmaischen über der Leistung des Heizelements</translation>
    </message>
    <message>
        <source>What is only supposed</source>
        <translation>Was nur angenommen ist</translation>
    </message>
    <message>
        <source>Wort left below about %1 for hours can sour and grow bacteria: in this plan it is that for %2 of its %3 unplugged (%4). Boil it promptly afterwards, or do not leave it that long.</source>
        <translation>Würze, die stundenlang unter etwa %1 bleibt, kann sauer werden und Bakterien wachsen lassen: In diesem Plan ist sie das %2 von %3 ohne Strom (%4). Kochen Sie sie danach sofort, oder lassen Sie sie nicht so lange stehen.</translation>
    </message>
    <message>
        <source>a jacket</source>
        <translation>Mantel</translation>
    </message>
    <message>
        <source>a jacket (%1)</source>
        <translation>Mantel (%1)</translation>
    </message>
    <message>
        <source>a jacket saves</source>
        <translation>ein Mantel spart</translation>
    </message>
    <message>
        <source>a supposed jacket (%1)</source>
        <translation>ein angenommener Mantel (%1)</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>wie es ist</translation>
    </message>
    <message>
        <source>below %1 for</source>
        <translation>unter %1 insgesamt</translation>
    </message>
    <message>
        <source>below %1 from here on</source>
        <translation>von hier an unter %1</translation>
    </message>
    <message>
        <source>if it had %1</source>
        <translation>mit angenommenem Mantel (%1)</translation>
    </message>
    <message>
        <source>if it had a jacket so thick</source>
        <translation>mit angenommenem, so dickem Mantel</translation>
    </message>
    <message>
        <source>if it were bare</source>
        <translation>angenommen ohne Mantel</translation>
    </message>
    <message>
        <source>if its jacket were so thick</source>
        <translation>mit eigenem Mantel, wäre er so dick</translation>
    </message>
    <message>
        <source>in the end, after %1</source>
        <translation>am Ende, nach %1</translation>
    </message>
    <message>
        <source>its own jacket (%1)</source>
        <translation>der eigene Mantel (%1)</translation>
    </message>
    <message>
        <source>left alone at</source>
        <translation>zu Anfang</translation>
    </message>
    <message>
        <source>passes %1 after</source>
        <translation>unterschreitet %1 nach</translation>
    </message>
    <message>
        <source>A jacket for %1: %2</source>
        <translation>Ein Mantel für %1: %2</translation>
    </message>
    <message>
        <source>▲ overload</source>
        <translation>▲ Überlast</translation>
    </message>
    <message>
        <source>overload</source>
        <translation>Überlast</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>%1 [%2]</source>
        <translation>%1 [%2]</translation>
    </message>
    <message>
        <source>[%1] %2</source>
        <translation>[%1] %2</translation>
    </message>
    <message>
        <source>▲ Overload: %1 draws %2 from its circuit of %3. Do not run it like that.</source>
        <translation>▲ Überlast: %1 zieht %2 aus einem Stromkreis für %3. Betreiben Sie es so nicht.</translation>
    </message>
    <message>
        <source>of that, the pump&apos;s</source>
        <translation>davon von der Pumpe</translation>
    </message>
    <message>
        <source>bare, it levels off at %1 in the boil</source>
        <translation>ohne Mantel bleibt es bei %1 im Kochen stehen</translation>
    </message>
    <message>
        <source>bare, it levels off at %1 on the way to the boil</source>
        <translation>ohne Mantel bleibt es bei %1 auf dem Weg zum Kochen stehen</translation>
    </message>
    <message>
        <source>with the jacket it levels off at %1 in the boil</source>
        <translation>mit Mantel bleibt es bei %1 im Kochen stehen</translation>
    </message>
    <message>
        <source>with the jacket it levels off at %1 on the way to the boil</source>
        <translation>mit Mantel bleibt es bei %1 auf dem Weg zum Kochen stehen</translation>
    </message>
    <message>
        <source>It still does not boil: it levels off at %1 on the way to the boil.</source>
        <translation>Es kocht trotzdem nicht: Es bleibt bei %1 auf dem Weg zum Kochen stehen.</translation>
    </message>
    <message>
        <source>heating before the boil</source>
        <translation>Aufheizen vor dem Kochen</translation>
    </message>
    <message>
        <source>with the jacket it reaches strike in %2, and levels off at %1 in the boil</source>
        <translation>mit Mantel erreicht es das Einmaischen in %2 und bleibt bei %1 im Kochen stehen</translation>
    </message>
    <message>
        <source>with the jacket it reaches strike in %2, and levels off at %1 on the way to the boil</source>
        <translation>mit Mantel erreicht es das Einmaischen in %2 und bleibt bei %1 auf dem Weg zum Kochen stehen</translation>
    </message>
    <message>
        <source>boil %1</source>
        <translation>kocht %1</translation>
    </message>
    <message>
        <source>If it were bare: %1 after %2 unplugged, from %3.</source>
        <translation>Angenommen ohne Mantel: %1 nach %2 ohne Strom, von %3 an.</translation>
    </message>
    <message>
        <source>If it had %4: %1 after %2 unplugged, from %3.</source>
        <translation>Mit angenommenem Mantel (%4): %1 nach %2 ohne Strom, von %3 an.</translation>
    </message>
    <message>
        <source>This plan has no mash that could be left alone.</source>
        <translation>Dieser Plan hat keine Maische, die allein bleiben könnte.</translation>
    </message>
    <message>
        <source>This plan has no jacket to compare.</source>
        <translation>Dieser Plan hat keinen Mantel zum Vergleichen.</translation>
    </message>
    <message>
        <source>%1 a batch with %2; the plan gives no price.</source>
        <translation>%1 je Sud mit %2; der Plan nennt keinen Preis.</translation>
    </message>
    <message>
        <source>It comes to the boil, but falls back towards %1.</source>
        <translation>Es kommt zum Kochen, fällt aber zurück auf %1.</translation>
    </message>
    <message>
        <source>It levels off at %1.</source>
        <translation>Es bleibt bei %1 stehen.</translation>
    </message>
    <message>
        <source>%1 of the mouth open at most, but never shut</source>
        <translation>höchstens %1 freier Öffnung, aber nie ganz geschlossen</translation>
    </message>
    <message>
        <source>Enough for all that is wanted of it.</source>
        <translation>Genug für das, was verlangt wird.</translation>
    </message>
    <message>
        <source>It would roll with %1.</source>
        <translation>Es wallte mit %1.</translation>
    </message>
    <message>
        <source>On a circuit that carries it, it would be enough for all that is wanted of it.</source>
        <translation>An einem Stromkreis, der das trägt, wäre es genug für das, was verlangt wird.</translation>
    </message>
    <message>
        <source>That takes %1: an element of %2 at %3, more than its circuit carries.</source>
        <translation>Das braucht %1: ein Heizelement mit %2 bei %3, mehr, als der Stromkreis trägt.</translation>
    </message>
    <message>
        <source>That takes %1: an element of %2 at %3, which its circuit carries for short use only.</source>
        <translation>Das braucht %1: ein Heizelement mit %2 bei %3, das der Stromkreis nur für kurze Zeit trägt.</translation>
    </message>
    <message>
        <source>That takes %1: an element of %2 at %3, which its circuit carries.</source>
        <translation>Das braucht %1: ein Heizelement mit %2 bei %3, das der Stromkreis trägt.</translation>
    </message>
    <message>
        <source>Together that takes %1, from an element rated %2 at %3 (%4 at %5).</source>
        <translation>Alles zusammen braucht %1, von einem Heizelement mit %2 bei %3 (%4 bei %5).</translation>
    </message>
    <message>
        <source>Together that takes %1, from an element rated %2 at %3.</source>
        <translation>Alles zusammen braucht %1, von einem Heizelement mit %2 bei %3.</translation>
    </message>
    <message>
        <source>Together that takes %1, more than this cable can carry.</source>
        <translation>Alles zusammen braucht %1, mehr, als dieses Kabel bringen kann.</translation>
    </message>
    <message>
        <source>Together that takes %1.</source>
        <translation>Alles zusammen braucht %1.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: on the edge of its circuit of %2; %3. Have the current measured, or leave room with less power.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: an der Grenze des Stromkreises mit %2; %3. Lassen Sie den Strom messen, oder halten Sie mit weniger Leistung Abstand.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: on the edge of its first circuit of %2; %3. Have the current measured, or leave room with less power.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: an der Grenze des ersten Stromkreises mit %2; %3. Lassen Sie den Strom messen, oder halten Sie mit weniger Leistung Abstand.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: on the edge of its second circuit of %2; %3. Have the current measured, or leave room with less power.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: an der Grenze des zweiten Stromkreises mit %2; %3. Lassen Sie den Strom messen, oder halten Sie mit weniger Leistung Abstand.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: too much for its circuit of %2; %3.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: zu viel für den Stromkreis mit %2; %3.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: too much for its first circuit of %2; %3.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: zu viel für den ersten Stromkreis mit %2; %3.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: too much for its second circuit of %2; %3.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: zu viel für den zweiten Stromkreis mit %2; %3.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: within its %2 circuit, but more than the %3 that rules grant to long use.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: Der Stromkreis mit %2 trägt das, aber es ist mehr als die %3, die Regeln auf Dauer zulassen.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: within its first %2 circuit, but more than the %3 that rules grant to long use.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: Der erste Stromkreis mit %2 trägt das, aber es ist mehr als die %3, die Regeln auf Dauer zulassen.</translation>
    </message>
    <message>
        <source>By its name plate it draws %1: within its second %2 circuit, but more than the %3 that rules grant to long use.</source>
        <translation>Nach dem Typenschild nimmt es %1 auf: Der zweite Stromkreis mit %2 trägt das, aber es ist mehr als die %3, die Regeln auf Dauer zulassen.</translation>
    </message>
    <message>
        <source>%1 from mash to boil and %2 a batch is what %4 saves with %3: not worth it for the time, no more than %5 of it, but for the heat it holds.</source>
        <translation>%1 von der Maische bis zum Kochen und %2 je Sud spart %4 mit %3: Er lohnt sich nicht der Zeit wegen, von der es höchstens %5 sind, aber für die Wärme, die er hält.</translation>
    </message>
    <message>
        <source>%1 from mash to boil and %2 a batch is what %4 saves with %3: not worth it, no more than %5 of a heat-up.</source>
        <translation>%1 von der Maische bis zum Kochen und %2 je Sud spart %4 mit %3: Er lohnt sich nicht, höchstens %5 eines Aufheizens.</translation>
    </message>
    <message>
        <source>%1 from mash to boil and %2 a batch is what %4 saves with %3: worth it, more than %5 of a heat-up.</source>
        <translation>%1 von der Maische bis zum Kochen und %2 je Sud spart %4 mit %3: Er lohnt sich, mehr als %5 eines Aufheizens.</translation>
    </message>
    <message>
        <source>%1 of %2 from mash to boil</source>
        <translation>%1 von %2 von der Maische bis zum Kochen</translation>
    </message>
    <message>
        <source>%1 of %2 to strike</source>
        <translation>%1 von %2 bis zum Einmaischen</translation>
    </message>
    <message>
        <source>Compared: %1; over %2 is worth it.</source>
        <translation>Verglichen wird %1; mehr als %2 lohnen sich.</translation>
    </message>
    <message>
        <source>It saves %1.</source>
        <translation>Er spart %1.</translation>
    </message>
    <message>
        <source>It would save %1.</source>
        <translation>Er würde %1 sparen.</translation>
    </message>
    <message>
        <source>Not worth it for the time, no more than %1 of it: %2.</source>
        <translation>Der Zeit wegen lohnt es sich nicht, höchstens %1 davon: %2.</translation>
    </message>
    <message>
        <source>Not worth it for the time: no more than %1 of it.</source>
        <translation>Der Zeit wegen lohnt es sich nicht: höchstens %1 davon.</translation>
    </message>
    <message>
        <source>Not worth it, no more than %1 of the time: %2.</source>
        <translation>Es lohnt sich nicht, höchstens %1 der Zeit: %2.</translation>
    </message>
    <message>
        <source>Not worth it: no more than %1 of the time.</source>
        <translation>Es lohnt sich nicht: höchstens %1 der Zeit.</translation>
    </message>
    <message>
        <source>Worth it for the time to strike: more than %1 of it.</source>
        <translation>Es lohnt sich für die Zeit bis zum Einmaischen: mehr als %1 davon.</translation>
    </message>
    <message>
        <source>Worth it: %1 of the time from mash to boil, where more than %2 counts as worth it.</source>
        <translation>Es lohnt sich: %1 der Zeit von der Maische bis zum Kochen, wo mehr als %2 als lohnend gelten.</translation>
    </message>
    <message>
        <source>A time to the boil is to the roll; first bubbles show %1 to %2 below.</source>
        <translation>Eine Zeit bis zum Kochen meint das Wallen; erste Blasen zeigen sich %1 bis %2 darunter.</translation>
    </message>
    <message>
        <source>The figures that decide</source>
        <translation>Die Zahlen, die entscheiden</translation>
    </message>
    <message>
        <source>%1 after %2 unplugged</source>
        <translation>%1 nach %2 ohne Strom</translation>
    </message>
    <message>
        <source>%1 fits its %2 circuit</source>
        <translation>%1 passen zum Stromkreis mit %2</translation>
    </message>
    <message>
        <source>%1 fits its %2 circuit on conditions: see &quot;circuit&quot;</source>
        <translation>%1 passen nur bedingt zum Stromkreis mit %2: siehe „circuit“</translation>
    </message>
    <message>
        <source>%1 is on the edge of its %2 circuit</source>
        <translation>%1 sind an der Grenze des Stromkreises mit %2</translation>
    </message>
    <message>
        <source>%1 is too much for its %2 circuit</source>
        <translation>%1 sind zu viel für den Stromkreis mit %2</translation>
    </message>
    <message>
        <source>%1 is too much for long use of its %2 circuit</source>
        <translation>%1 sind auf Dauer zu viel für den Stromkreis mit %2</translation>
    </message>
    <message>
        <source>%1 is within its %2 circuit, but not within its rules: see &quot;circuit&quot;</source>
        <translation>%1 trägt der Stromkreis mit %2, aber nicht nach den Regeln: siehe „circuit“</translation>
    </message>
    <message>
        <source>%1 is within its %2 circuit, by name plates alone</source>
        <translation>%1 trägt der Stromkreis mit %2, allein nach den Typenschildern</translation>
    </message>
    <message>
        <source>cannot strike: the water would have to be %1</source>
        <translation>kann nicht einmaischen: Das Wasser müsste %1 haben</translation>
    </message>
    <message>
        <source>does not finish its day</source>
        <translation>kommt nicht ans Ende des Tages</translation>
    </message>
    <message>
        <source>never gets warm enough to strike: it levels off at %1</source>
        <translation>wird nie warm genug zum Einmaischen: Es bleibt bei %1 stehen</translation>
    </message>
    <message>
        <source>never reaches its next rest: it levels off at %1</source>
        <translation>erreicht die nächste Rast nie: Es bleibt bei %1 stehen</translation>
    </message>
    <message>
        <source>never rolls, with no element at all</source>
        <translation>wallt nie, mit keinem Heizelement</translation>
    </message>
    <message>
        <source>never rolls: %1 of the %2 it needs</source>
        <translation>wallt nie: %1 von nötigen %2</translation>
    </message>
    <message>
        <source>no more than simmers from %1</source>
        <translation>siedet ab %1 nur leise</translation>
    </message>
    <message>
        <source>on the edge of rolling with %1, as %2 to %3 may be needed</source>
        <translation>steht beim Wallen mit %1 auf der Kippe, da %2 bis %3 nötig sein können</translation>
    </message>
    <message>
        <source>over at %1</source>
        <translation>fertig um %1</translation>
    </message>
    <message>
        <source>rolls fiercely from %1</source>
        <translation>wallt ab %1 heftig</translation>
    </message>
    <message>
        <source>rolls gently from %1</source>
        <translation>wallt ab %1 sanft</translation>
    </message>
    <message>
        <source>rolls steadily from %1</source>
        <translation>wallt ab %1 stetig</translation>
    </message>
    <message>
        <source>rolls strongly from %1</source>
        <translation>wallt ab %1 kräftig</translation>
    </message>
    <message>
        <source>steams without rolling: %1 of the %2 that rolling takes</source>
        <translation>dampft, ohne zu wallen: %1 von dazu nötigen %2</translation>
    </message>
    <message>
        <source>uncovers its element, which would burn out: %1 is left</source>
        <translation>legt das Heizelement frei, das durchbrennen würde: %1 sind noch übrig</translation>
    </message>
    <message>
        <source>%1 for %2.</source>
        <translation>%1 für %2.</translation>
    </message>
    <message>
        <source>Keep the element covered whenever it is on; dry, it burns out in seconds.</source>
        <translation>Das Heizelement muss bedeckt sein, solange es an ist; trocken brennt es in Sekunden durch.</translation>
    </message>
    <message>
        <source>Never close, clamp or block a heated vessel, or shut the lid on a boil.</source>
        <translation>Ein beheiztes Gefäß nie verschließen, verspannen oder verstopfen, beim Kochen nie den Deckel schließen.</translation>
    </message>
    <message>
        <source>If it rolls, enough for all that is wanted of it.</source>
        <translation>Wenn es wallt, genug für das, was verlangt wird.</translation>
    </message>
    <message>
        <source>If it rolls, %1 boils off, %2: %3.</source>
        <translation>Wenn es wallt, verdampfen %1, %2: %3.</translation>
    </message>
    <message>
        <source>What helps most?</source>
        <translation>Was hilft vor allem?</translation>
    </message>
    <message>
        <source>Helps most?</source>
        <translation>Was hilft?</translation>
    </message>
    <message>
        <source>It rolls after %1: %2.</source>
        <translation>Es wallt nach %1: %2.</translation>
    </message>
    <message>
        <source>Nobody can say whether it rolls: perhaps after %1.</source>
        <translation>Niemand kann sagen, ob es wallt: vielleicht nach %1.</translation>
    </message>
    <message>
        <source>The water is ready for the grain after %1.</source>
        <translation>Das Wasser ist nach %1 bereit zum Einmaischen.</translation>
    </message>
    <message>
        <source>From mash to boil it takes %1.</source>
        <translation>Von der Maische bis zum Kochen dauert es %1.</translation>
    </message>
    <message>
        <source>Its jacket (%1): %2</source>
        <translation>Sein Mantel (%1): %2</translation>
    </message>
    <message>
        <source>A jacket (%1)? %2</source>
        <translation>Ein Mantel (%1)? %2</translation>
    </message>
    <message>
        <source>Overview</source>
        <translation>Überblick</translation>
    </message>
    <message>
        <source>over</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>its second circuit</source>
        <translation>ihr zweiter Stromkreis</translation>
    </message>
    <message>
        <source>on the edge, %1</source>
        <translation>an der Grenze, %1</translation>
    </message>
    <message>
        <source>too much for long use, %1</source>
        <translation>zu viel auf Dauer, %1</translation>
    </message>
    <message>
        <source>✓ fits, %1</source>
        <translation>✓ passt, %1</translation>
    </message>
    <message>
        <source>◑ on conditions, %1</source>
        <translation>◑ unter Bedingungen, %1</translation>
    </message>
    <message>
        <source>not within its rules, %1</source>
        <translation>nicht nach den Regeln, %1</translation>
    </message>
    <message>
        <source>within its rating, %1</source>
        <translation>unter dem Nennstrom, %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>The figures of the others are told by how much they differ from those of %1; &quot;=&quot; is the same.</source>
        <translation>Die Zahlen der anderen sagen, um wie viel sie von denen von %1 abweichen; „=“ heißt gleich.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>rolls at %1</source>
        <translation>wallt um %1</translation>
    </message>
    <message>
        <source>%1 into steam, %2 %3</source>
        <translation>%1 in Dampf, %2 %3</translation>
    </message>
    <message>
        <source>no jacket to compare</source>
        <translation>kein Mantel zum Vergleich</translation>
    </message>
    <message>
        <source>makes it boil</source>
        <translation>bringt es zum Kochen</translation>
    </message>
    <message>
        <source>gets further, no boil</source>
        <translation>kommt weiter, kocht nicht</translation>
    </message>
    <message>
        <source>yes, %1 sooner</source>
        <translation>ja, %1 früher</translation>
    </message>
    <message>
        <source>little time, %1</source>
        <translation>wenig Zeit, %1</translation>
    </message>
    <message>
        <source>little time</source>
        <translation>wenig Zeit</translation>
    </message>
    <message>
        <source>hardly</source>
        <translation>kaum</translation>
    </message>
    <message>
        <source>none fulfils all goals</source>
        <translation>keines erfüllt alle Ziele</translation>
    </message>
    <message>
        <source>%1 wanted, has %2</source>
        <translation>%1 nötig, hat %2</translation>
    </message>
    <message>
        <source>no mash to leave alone</source>
        <translation>keine Maische, die steht</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 nach %2</translation>
    </message>
    <message>
        <source>%1 of vapour</source>
        <translation>%1 Dampf</translation>
    </message>
    <message>
        <source>no single change</source>
        <translation>keine einzelne Änderung</translation>
    </message>
    <message>
        <source>perhaps not</source>
        <translation>vielleicht nicht</translation>
    </message>
    <message>
        <source>perhaps %1</source>
        <translation>vielleicht %1</translation>
    </message>
    <message>
        <source>may not roll</source>
        <translation>wallt vielleicht nicht</translation>
    </message>
    <message>
        <source>It stays too hot for food germs to grow.</source>
        <translation>Für Lebensmittelkeime bleibt es zu heiß.</translation>
    </message>
    <message>
        <source>Food germs would double %1 times; %2 times is the most for food.</source>
        <translation>Lebensmittelkeime würden sich %1-mal verdoppeln; höchstens %2-mal gilt für Lebensmittel.</translation>
    </message>
    <message>
        <source>That is reached after %1, at %2: boil it by then, or hold it at %3 or more.</source>
        <translation>Das ist nach %1 erreicht, um %2: bis dahin kochen oder bei %3 oder mehr halten.</translation>
    </message>
    <message>
        <source>That is reached after %1: boil it by then, or hold it at %2 or more.</source>
        <translation>Das ist nach %1 erreicht: bis dahin kochen oder bei %2 oder mehr halten.</translation>
    </message>
    <message>
        <source>food germs would double, times</source>
        <translation>Lebensmittelkeime verdoppelten sich, Male</translation>
    </message>
    <message>
        <source>the tenth doubling after</source>
        <translation>die zehnte Verdopplung nach</translation>
    </message>
    <message>
        <source>souring germs would grow, powers of ten</source>
        <translation>Säurekeime wüchsen, Zehnerpotenzen</translation>
    </message>
    <message>
        <source>What grows at worst</source>
        <translation>Was schlimmstenfalls wächst</translation>
    </message>
    <message>
        <source>What grows meanwhile, at worst</source>
        <translation>Was derweil schlimmstenfalls wächst</translation>
    </message>
    <message>
        <source>At worst: the fastest germ at each temperature, from the first moment on. Souring shows at about six powers of ten, and by a pH below about 5.0 before the boil. The boil kills these germs and their spores, but undoes no toxin that is already there.</source>
        <translation>Schlimmstenfalls: bei jeder Temperatur der Keim, dem sie gefällt, vom ersten Augenblick an. Saures zeigt sich bei etwa sechs Zehnerpotenzen und an einem pH-Wert unter etwa 5,0 vor dem Kochen. Das Kochen tötet diese Keime und ihre Sporen, macht aber kein Gift unschädlich, das schon da ist.</translation>
    </message>
    <message>
        <source>How sure is this?</source>
        <translation>Wie sicher ist das?</translation>
    </message>
    <message>
        <source>How sure?</source>
        <translation>Wie sicher?</translation>
    </message>
    <message>
        <source>· on 8 of 10 days</source>
        <translation>· an 8 von 10 Tagen</translation>
    </message>
    <message>
        <source>%1: %2, %3 of what came in</source>
        <translation>%1: %2, %3 von dem, was hineinkam</translation>
    </message>
    <message>
        <source>%1: %2, %3 of what came in, %4</source>
        <translation>%1: %2, %3 von dem, was hineinkam, %4</translation>
    </message>
    <message>
        <source>%1 for less power</source>
        <translation>%1 durch weniger Leistung</translation>
    </message>
    <message>
        <source>%1 by more power</source>
        <translation>%1 durch mehr Leistung</translation>
    </message>
    <message>
        <source>%1 to warm more</source>
        <translation>%1, um mehr zu erwärmen</translation>
    </message>
    <message>
        <source>%1 at the surface and as steam</source>
        <translation>%1 an der Oberfläche und als Dampf</translation>
    </message>
    <message>
        <source>%1 through the walls</source>
        <translation>%1 durch die Wände</translation>
    </message>
    <message>
        <source>%1 through the lid</source>
        <translation>%1 durch den Deckel</translation>
    </message>
    <message>
        <source>%1 through the base</source>
        <translation>%1 durch den Boden</translation>
    </message>
    <message>
        <source>%1 through the hose</source>
        <translation>%1 durch den Schlauch</translation>
    </message>
    <message>
        <source>It takes %2 longer to heat %1 than %3: %4.</source>
        <translation>Um %2 länger als %3 heizt %1: %4.</translation>
    </message>
    <message>
        <source>It takes %2 longer to heat %1 than %3: %4. It saves %5.</source>
        <translation>Um %2 länger als %3 heizt %1: %4. Eingespart werden %5.</translation>
    </message>
    <message>
        <source>%1 as there is less to warm</source>
        <translation>%1, weil weniger zu erwärmen ist</translation>
    </message>
    <message>
        <source>stirred all the time</source>
        <translation>ständig gerührt</translation>
    </message>
    <message>
        <source>left still</source>
        <translation>ohne Rühren</translation>
    </message>
    <message>
        <source>in one pass</source>
        <translation>in einem Durchgang</translation>
    </message>
    <message>
        <source>by air alone</source>
        <translation>an der Luft allein</translation>
    </message>
    <message>
        <source>There is no finished wort that could be chilled.</source>
        <translation>Es gibt keine fertige Würze, die zu kühlen wäre.</translation>
    </message>
    <message>
        <source>%1 to %2 is what %3 takes, %4.</source>
        <translation>%1 bis %2 braucht %3, %4.</translation>
    </message>
    <message>
        <source>%1 to %2 is what %3 takes, %4: the quickest.</source>
        <translation>%1 bis %2 braucht %3, %4: am schnellsten.</translation>
    </message>
    <message>
        <source>%1 to %2 with %3, %4: the slowest.</source>
        <translation>%1 bis %2 mit %3, %4: am langsamsten.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>The water takes too little: it comes to rest at about %1, where the room gives as much.</source>
        <translation>Das Wasser nimmt zu wenig: Bei etwa %1 bleibt es stehen, wo der Raum ebenso viel gibt.</translation>
    </message>
    <message>
        <source>Stirred all the time it comes to %1 in about %2 with %3 of water, left still in about %4 with %5.</source>
        <translation>Ständig gerührt kommt sie in etwa %2 mit %3 Wasser auf %1, ohne Rühren in etwa %4 mit %5.</translation>
    </message>
    <message>
        <source>Stirred all the time it comes to %1 in about %2 with %3 of water; left still it may never get there.</source>
        <translation>Ständig gerührt kommt sie in etwa %2 mit %3 Wasser auf %1; ohne Rühren kommt sie vielleicht nie dorthin.</translation>
    </message>
    <message>
        <source>At %1 of wort one pass takes %2 and %3 of water. The wort leaves at about %4 (%5 to %6), the water at about %7.</source>
        <translation>Bei %1 Würze dauert ein Durchgang %2 und braucht %3 Wasser. Die Würze kommt mit etwa %4 heraus (%5 bis %6), das Wasser mit etwa %7.</translation>
    </message>
    <message>
        <source>That is warmer than %1: with about %2 of wort it leaves at that.</source>
        <translation>Das ist wärmer als %1: Mit etwa %2 Würze käme sie so kalt heraus.</translation>
    </message>
    <message>
        <source>That is warmer than %1, and no slower wort gets there: a longer tube, more water or a second pass would.</source>
        <translation>Das ist wärmer als %1, und auch langsamer fließende Würze kommt nicht dorthin: Ein längeres Rohr, mehr Wasser oder ein zweiter Durchgang täten es.</translation>
    </message>
    <message>
        <source>%1 is out of reach: water of %2 brings wort to about %3 at best. What would do it: about %4 of ice in a bath round it; water of %5 or colder; or pitching at %3.</source>
        <translation>%1 ist nicht zu erreichen: Wasser von %2 bringt Würze bestenfalls auf etwa %3. Was hülfe: etwa %4 Eis in einem Bad darum; Wasser von höchstens %5; oder Anstellen bei %3.</translation>
    </message>
    <message>
        <source>No chiller is stated: a common one is supposed, a %1 coil of %2 tube, %3 long, with %4 of water.</source>
        <translation>Kein Kühler ist angegeben: Ein üblicher ist unterstellt, eine Spirale aus %1, Rohr %2, %3 lang, mit %4 Wasser.</translation>
    </message>
    <message>
        <source>The cooling water is taken to be as cold as the water for brewing, %1; summer mains are warmer.</source>
        <translation>Das Kühlwasser gilt als so kalt wie das Brauwasser, %1; im Sommer ist Leitungswasser wärmer.</translation>
    </message>
    <message>
        <source>stirred</source>
        <translation>gerührt</translation>
    </message>
    <message>
        <source>still</source>
        <translation>ruhend</translation>
    </message>
    <message>
        <source>still, at worst</source>
        <translation>ruhend, schlechtestenfalls</translation>
    </message>
    <message>
        <source>Wort while it is chilled</source>
        <translation>Würze, während sie gekühlt wird</translation>
    </message>
    <message>
        <source>down to %1</source>
        <translation>hinunter auf %1</translation>
    </message>
    <message>
        <source>What is chilled</source>
        <translation>Was gekühlt wird</translation>
    </message>
    <message>
        <source>wort, cold</source>
        <translation>Würze, kalt</translation>
    </message>
    <message>
        <source>begins at</source>
        <translation>beginnt um</translation>
    </message>
    <message>
        <source>cooling water</source>
        <translation>Kühlwasser</translation>
    </message>
    <message>
        <source>pitched at</source>
        <translation>angestellt bei</translation>
    </message>
    <message>
        <source>ice to get there</source>
        <translation>Eis, um hinzukommen</translation>
    </message>
    <message>
        <source>down to the goal</source>
        <translation>hinunter zum Ziel</translation>
    </message>
    <message>
        <source>down to pitching</source>
        <translation>hinunter zum Anstellen</translation>
    </message>
    <message>
        <source>water for that</source>
        <translation>Wasser dafür</translation>
    </message>
    <message>
        <source>which leaves at first at</source>
        <translation>das zuerst herauskommt mit</translation>
    </message>
    <message>
        <source>and on average at</source>
        <translation>und im Mittel mit</translation>
    </message>
    <message>
        <source>In one pass of a counterflow chiller</source>
        <translation>In einem Durchgang eines Gegenstromkühlers</translation>
    </message>
    <message>
        <source>for all of the wort</source>
        <translation>für die ganze Würze</translation>
    </message>
    <message>
        <source>wort leaves at</source>
        <translation>Würze kommt heraus mit</translation>
    </message>
    <message>
        <source>at best</source>
        <translation>bestenfalls</translation>
    </message>
    <message>
        <source>at worst</source>
        <translation>schlechtestenfalls</translation>
    </message>
    <message>
        <source>water leaves at</source>
        <translation>Wasser kommt heraus mit</translation>
    </message>
    <message>
        <source>With a coil, stirred all the time</source>
        <translation>Mit einer Spirale, ständig gerührt</translation>
    </message>
    <message>
        <source>With a coil, left still, at best</source>
        <translation>Mit einer Spirale, ohne Rühren, bestenfalls</translation>
    </message>
    <message>
        <source>With a coil, left still, at worst</source>
        <translation>Mit einer Spirale, ohne Rühren, schlechtestenfalls</translation>
    </message>
    <message>
        <source>Left to cool by itself</source>
        <translation>Von selbst abgekühlt</translation>
    </message>
    <message>
        <source>The same without its jacket</source>
        <translation>Dasselbe ohne Mantel</translation>
    </message>
    <message>
        <source>A chiller, its hoses and the wort stay hot enough to scald until the end.</source>
        <translation>Ein Kühler, seine Schläuche und die Würze bleiben bis zuletzt heiß genug zum Verbrühen.</translation>
    </message>
    <message>
        <source>Never close a hot vessel, not even to let it cool: steam that condenses leaves a vacuum, which buckles walls and sucks in what is at the lid. Leave the lid loose and vents open until it is cold.</source>
        <translation>Verschließen Sie nie ein heißes Gefäß, auch nicht zum Abkühlen: Dampf, der kondensiert, hinterlässt ein Vakuum, das Wände eindrückt und einsaugt, was am Deckel ist. Lassen Sie den Deckel lose und Öffnungen frei, bis es kalt ist.</translation>
    </message>
    <message>
        <source>Switch the element off and unplug it before a coil goes in and water runs beside it; a leak at a hose wets whatever is below.</source>
        <translation>Schalten Sie das Heizelement ab und ziehen Sie den Stecker, bevor eine Spirale hineinkommt und Wasser daneben läuft; ein Leck am Schlauch nässt, was darunter ist.</translation>
    </message>
    <message>
        <source>What grows in food grows in wort between %1 and %2 until yeast has taken over. As an inspector of food service would say: from %1 to %3 within 2 h and to %2 within 6 h in all (FDA Food Code 3-501.14); a yardstick, no rule for beer. Pitch promptly.</source>
        <translation>Was in Lebensmitteln wächst, wächst zwischen %1 und %2 auch in Würze, bis die Hefe überhandnimmt. Die Lebensmittelaufsicht würde sagen: von %1 auf %3 binnen 2 h und auf %2 binnen insgesamt 6 h (FDA Food Code 3-501.14); ein Maßstab, keine Regel für Bier. Stellen Sie zügig an.</translation>
    </message>
    <message>
        <source>Do not seal unfermented wort to keep it warm or at room temperature: spores of botulism survive the boil.</source>
        <translation>Verschließen Sie unvergorene Würze nicht, um sie warm oder bei Raumtemperatur aufzuheben: Sporen des Botulismus überleben das Kochen.</translation>
    </message>
    <message>
        <source>How long does it take to chill?</source>
        <translation>Wie lange dauert das Kühlen?</translation>
    </message>
    <message>
        <source>Chills how fast?</source>
        <translation>Kühlt wie schnell?</translation>
    </message>
    <message>
        <source>The cooling water leaves at up to about %1 at first: it scalds. Fasten both hoses before the tap is opened, lead the hot one where nobody reaches, and open it slowly: water in a hot tube may spit steam. %2.</source>
        <translation>Das Kühlwasser kommt zuerst mit bis zu etwa %1 heraus: Es verbrüht. Befestigen Sie beide Schläuche, bevor der Hahn geöffnet wird, führen Sie den heißen dorthin, wo niemand hinkommt, und öffnen Sie langsam: Wasser in einem heißen Rohr kann Dampf spucken. %2.</translation>
    </message>
    <message>
        <source>The hot stand of %1 comes before all of this.</source>
        <translation>Das Heißhalten von %1 geht alledem voraus.</translation>
    </message>
    <message>
        <source>Followed over the falling temperature with the kettle&apos;s own losses and all of its metal. Wort that is not stirred is warmer at the top than told here.</source>
        <translation>Verfolgt über die fallende Temperatur, mit den eigenen Verlusten des Kessels und all seinem Metall. Nicht gerührte Würze ist oben wärmer, als hier steht.</translation>
    </message>
    <message>
        <source>A coil: Gnielinski inside, across a stream of 0.15 m/s outside where it is stirred (Churchill &amp; Bernstein), else its own buoyancy (Xin &amp; Ebadian), down to 400 W/(m²K) overall for the slow end. Lid off, the coil 60 % as wide as the kettle, tube walls 0.8 mm, no scale.</source>
        <translation>Eine Spirale: innen Gnielinski, außen quer in einem Strom von 0,15 m/s, wo gerührt wird (Churchill &amp; Bernstein), sonst ihr eigener Auftrieb (Xin &amp; Ebadian), bis hinunter zu 400 W/(m²K) insgesamt für das langsame Ende. Ohne Deckel, die Spirale 60 % so weit wie der Kessel, Rohrwände 0,8 mm, kein Kalk.</translation>
    </message>
    <message>
        <source>A counterflow chiller: effectiveness by transfer units, its hose 7 mm wider than the tube, the conductance 25 % less and more for the two ends.</source>
        <translation>Ein Gegenstromkühler: Wirkungsgrad nach Übertragungseinheiten, der Schlauch 7 mm weiter als das Rohr, der Leitwert 25 % kleiner und größer für die beiden Enden.</translation>
    </message>
    <message>
        <source>as it leaves</source>
        <translation>wie sie herauskommt</translation>
    </message>
    <message>
        <source>%1 is never reached: what cools the wort is too warm for that.</source>
        <translation>%1 wird nie erreicht: Was die Würze kühlt, ist zu warm dafür.</translation>
    </message>
    <message>
        <source>Still wort is told as a band, since measured coils differ by so much.</source>
        <translation>Für ruhende Würze steht eine Spanne, da sich gemessene Spiralen so weit unterscheiden.</translation>
    </message>
    <message>
        <source>Stirring is worth more than a coil twice as long, or twice the water.</source>
        <translation>Rühren ist mehr wert als eine doppelt so lange Spirale oder doppelt so viel Wasser.</translation>
    </message>
    <message>
        <source>Take the jacket off for that: bare it is at %1 after about %2. A jacket is safer for a mash and worse for cooling wort.</source>
        <translation>Dafür gehört der Mantel ab: Ohne ihn sind %1 nach etwa %2 erreicht. Ein Mantel ist sicherer für eine Maische und schlechter zum Kühlen von Würze.</translation>
    </message>
    <message>
        <source>Left to cool by itself, its lid as in the mash, it is at %1 after about %2; a room of %3 never brings it to %4.</source>
        <translation>Von selbst, mit dem Deckel wie bei der Maische, ist sie nach etwa %2 bei %1; ein Raum von %3 bringt sie nie auf %4.</translation>
    </message>
    <message>
        <source>Left to cool by itself, its lid as in the mash, it is at %1 after about %2 and at %3 after about %4.</source>
        <translation>Von selbst, mit dem Deckel wie bei der Maische, ist sie nach etwa %2 bei %1 und nach etwa %4 bei %3.</translation>
    </message>
    <message>
        <source>From %1 to %2 that is about %3, where food service allows 2 h.</source>
        <translation>Von %1 auf %2 sind das etwa %3, wo die Lebensmittelaufsicht 2 h erlaubt.</translation>
    </message>
    <message>
        <source>%1 to %2 is what they all take; that tells none from another.</source>
        <translation>%1 bis %2 brauchen sie alle; das unterscheidet keinen vom anderen.</translation>
    </message>
    <message>
        <source>The water leaves at up to about %1 at first.</source>
        <translation>Das Wasser kommt anfangs mit bis zu etwa %1 heraus.</translation>
    </message>
    <message>
        <source>The whole day</source>
        <translation>Der ganze Tag</translation>
    </message>
    <message>
        <source>%1 go through its element&apos;s skin. Water sizzles on it from about %2.</source>
        <translation>%1 gehen durch die Oberfläche des Heizstabs. Wasser zischt an ihr ab etwa %2.</translation>
    </message>
    <message>
        <source>%1 go through its element&apos;s skin. In still water of %2 that skin is about %3 hot, and it sizzles from about %4.</source>
        <translation>%1 gehen durch die Oberfläche des Heizstabs. In ruhendem Wasser von %2 ist sie etwa %3 heiß, und ab etwa %4 zischt es an ihr.</translation>
    </message>
    <message>
        <source>Where grain rests on it, or the mash does not move, it boils there: about %1. Keep the mash moving while it heats.</source>
        <translation>Wo Malz auf ihr liegt oder die Maische sich nicht bewegt, kocht es dort: etwa %1. Halten Sie die Maische in Bewegung, solange er heizt.</translation>
    </message>
    <message>
        <source>Where grain rests on it, or the mash does not move, it is about %1.</source>
        <translation>Wo Malz auf ihr liegt oder die Maische sich nicht bewegt, ist sie etwa %1 heiß.</translation>
    </message>
    <message>
        <source>No published limit was found; common practice stays below %1 where grain reaches an element, and it does.</source>
        <translation>Ein veröffentlichter Grenzwert wurde nicht gefunden; üblich ist weniger als %1, wo Malz an den Heizstab kommt, und das hält er ein.</translation>
    </message>
    <message>
        <source>No published limit was found; common practice stays below %1 where grain reaches an element, and this is more.</source>
        <translation>Ein veröffentlichter Grenzwert wurde nicht gefunden; üblich ist weniger als %1, wo Malz an den Heizstab kommt, und das hier ist mehr.</translation>
    </message>
    <message>
        <source>No published limit was found; common practice stays below %1 in boiling wort, and it does.</source>
        <translation>Ein veröffentlichter Grenzwert wurde nicht gefunden; üblich ist weniger als %1 in kochender Würze, und das hält er ein.</translation>
    </message>
    <message>
        <source>No published limit was found; common practice stays below %1 in boiling wort, and this is more.</source>
        <translation>Ein veröffentlichter Grenzwert wurde nicht gefunden; üblich ist weniger als %1 in kochender Würze, und das hier ist mehr.</translation>
    </message>
    <message>
        <source>How hot does the element&apos;s skin get?</source>
        <translation>Wie heiß wird die Oberfläche des Heizstabs?</translation>
    </message>
    <message>
        <source>The element&apos;s skin</source>
        <translation>Die Oberfläche des Heizstabs</translation>
    </message>
    <message>
        <source>heat through it</source>
        <translation>Wärme durch sie</translation>
    </message>
    <message>
        <source>water sizzles on it from</source>
        <translation>Wasser zischt an ihr ab</translation>
    </message>
    <message>
        <source>in still water as warm as the mash</source>
        <translation>in ruhendem Wasser, so warm wie die Maische</translation>
    </message>
    <message>
        <source>in a mash that does not move</source>
        <translation>in einer Maische, die sich nicht bewegt</translation>
    </message>
    <message>
        <source>over at</source>
        <translation>vorbei um</translation>
    </message>
    <message>
        <source>%1 as planned</source>
        <translation>%1 wie geplant</translation>
    </message>
    <message>
        <source>%1 from the wall; its price hangs on the hour, and it has no beginning.</source>
        <translation>%1 aus der Steckdose; der Preis hängt an der Stunde, und einen Beginn gibt es nicht.</translation>
    </message>
    <message>
        <source>To be ready by %1 on 9 of 10 such days, begin by %2.</source>
        <translation>Um an 9 von 10 solchen Tagen bis %1 fertig zu sein, beginnen Sie bis %2.</translation>
    </message>
    <message>
        <source>On more than 1 of 10 such days it does not roll at all, however early it begins.</source>
        <translation>An mehr als 1 von 10 solchen Tagen wallt es überhaupt nicht, so früh es auch beginnt.</translation>
    </message>
    <message>
        <source>But the plan says that it could begin from %1 to %2 only: begun at %1, %3, %4 too late; begun at %2, %5, %6 early.</source>
        <translation>Nach dem Plan kann es aber nur von %1 bis %2 beginnen: Beginn um %1, %3, %4 zu spät; Beginn um %2, %5, %6 zu früh.</translation>
    </message>
    <message>
        <source>its strike water is ready at %1</source>
        <translation>das Einmaischwasser ist um %1 bereit</translation>
    </message>
    <message>
        <source>its mash is over at %1</source>
        <translation>die Maische ist um %1 zu Ende</translation>
    </message>
    <message>
        <source>it rolls at %1</source>
        <translation>es wallt um %1</translation>
    </message>
    <message>
        <source>its boil is over at %1</source>
        <translation>das Kochen ist um %1 zu Ende</translation>
    </message>
    <message>
        <source>its wort is chilled for pitching at %1</source>
        <translation>die Würze ist um %1 zum Anstellen gekühlt</translation>
    </message>
    <message>
        <source>%1 is when to begin with %2: then %3.</source>
        <translation>%1 ist der Beginn mit %2: %3.</translation>
    </message>
    <message>
        <source>%1 is when to begin with %2, the earliest: then %3.</source>
        <translation>%1 ist der Beginn mit %2, der früheste: %3.</translation>
    </message>
    <message>
        <source>%1 with %2, the latest.</source>
        <translation>%1 mit %2, der späteste.</translation>
    </message>
    <message>
        <source>Begin at %1: then %2.</source>
        <translation>Beginn um %1: %2.</translation>
    </message>
    <message>
        <source>Its water never gets warm enough to mash in, whenever it begins: its times count from then.</source>
        <translation>Das Wasser wird nie warm genug zum Einmaischen, wann immer es beginnt: die Zeiten zählen von da an.</translation>
    </message>
    <message>
        <source>Its mash never comes to its end, whenever it begins: its times count from then.</source>
        <translation>Die Maische kommt nie zu ihrem Ende, wann immer sie beginnt: die Zeiten zählen von da an.</translation>
    </message>
    <message>
        <source>Its wort never comes to %1 that way, whenever it begins: its times count from then.</source>
        <translation>Die Würze kommt so nie auf %1, wann immer es beginnt: die Zeiten zählen von da an.</translation>
    </message>
    <message>
        <source>It never rolls, whenever it begins: its times count from then.</source>
        <translation>Es wallt nie, wann immer es beginnt: die Zeiten zählen von da an.</translation>
    </message>
    <message>
        <source>begin at</source>
        <translation>Beginn um</translation>
    </message>
    <message>
        <source>begin at %1</source>
        <translation>Beginn um %1</translation>
    </message>
    <message>
        <source>· for 9 of 10 days, by</source>
        <translation>· für 9 von 10 Tagen bis</translation>
    </message>
    <message>
        <source>When to begin is the wanted time less what the plan&apos;s own day takes until then: the clock changes no time of a day, since room and water stay as they are stated. Many such days take longer: begin earlier, or be ready to wait.</source>
        <translation>Der Beginn ist die gewünschte Uhrzeit weniger das, was der Tag des Plans bis dahin dauert: Die Uhr ändert keine Dauer, denn Raum und Wasser bleiben, wie sie angegeben sind. Viele solche Tage dauern länger: Beginnen Sie früher, oder rechnen Sie mit Warten.</translation>
    </message>
    <message>
        <source>Never leave an element to switch on by itself: be there, awake, from its first minute and as long as it heats. A kettle that stands empty or has leaked burns its element out, and fire can follow. Local codes may forbid heating that nobody watches.</source>
        <translation>Lassen Sie ein Heizelement nie von selbst einschalten: Seien Sie wach dabei, von der ersten Minute an und solange es heizt. In einem Kessel, der leer steht oder ausgelaufen ist, brennt das Element durch, und das kann ein Feuer geben. Örtliche Vorschriften können Heizen ohne Aufsicht verbieten.</translation>
    </message>
    <message>
        <source>A clock time with %1 is of the day before.</source>
        <translation>Eine Uhrzeit mit %1 ist am Tag davor.</translation>
    </message>
    <message>
        <source>Other hours are told for their price alone: begun then, what is to be ready would be ready at another hour, too.</source>
        <translation>Andere Stunden sind nur ihres Preises wegen genannt: Dann begonnen, wäre auch das, was fertig sein soll, zu einer anderen Stunde fertig.</translation>
    </message>
    <message>
        <source>To be ready by %1 on 9 of 10 such days, begin by %2; if chilling takes no longer than told.</source>
        <translation>Um an 9 von 10 solchen Tagen bis %1 fertig zu sein, beginnen Sie bis %2; sofern das Kühlen nicht länger dauert als angegeben.</translation>
    </message>
    <message>
        <source>%1 boils off with %2: too little to carry DMS away.</source>
        <translation>%1 verdampfen mit %2: zu wenig, um DMS fortzutragen.</translation>
    </message>
    <message>
        <source>%1 boils off, which carries DMS away about as fast as it forms; what forms after the boil stays.</source>
        <translation>%1 verdampfen, was DMS etwa so schnell fortträgt, wie es entsteht; was nach dem Kochen entsteht, bleibt.</translation>
    </message>
    <message>
        <source>%1 boils off: below about 5 %/h DMS that forms mostly stays in the wort.</source>
        <translation>%1 verdampfen: unter etwa 5 %/h bleibt entstehendes DMS größtenteils in der Würze.</translation>
    </message>
    <message>
        <source>%1 boils off: from about 5 to 8 %/h it hangs on more than these figures whether DMS is noticed.</source>
        <translation>%1 verdampfen: von etwa 5 bis 8 %/h hängt es an mehr als diesen Zahlen, ob man DMS bemerkt.</translation>
    </message>
    <message>
        <source>%1: worth %2 at 100 °C</source>
        <translation>%1: so viel wie %2 bei 100 °C</translation>
    </message>
    <message>
        <source>Along the temperatures of the day and of its chilling; wort that waits for a counterflow chiller counts as long as it waits.</source>
        <translation>Entlang der Temperaturen des Tages und seines Kühlens; Würze, die auf einen Gegenstromkühler wartet, zählt, solange sie wartet.</translation>
    </message>
    <message>
        <source>DMS after the boil</source>
        <translation>DMS nach dem Kochen</translation>
    </message>
    <message>
        <source>DMS if left to cool by itself</source>
        <translation>DMS, wenn sie von selbst abkühlt</translation>
    </message>
    <message>
        <source>DMS once it is chilled</source>
        <translation>DMS nach dem Kühlen</translation>
    </message>
    <message>
        <source>For DMS to form, as minutes at 100 °C</source>
        <translation>Für die Bildung von DMS, als Minuten bei 100 °C</translation>
    </message>
    <message>
        <source>For hops about %1 at that are worth what %2 at sea level are.</source>
        <translation>Für Hopfen sind dabei etwa %1 so viel wert wie %2 auf Meereshöhe.</translation>
    </message>
    <message>
        <source>For hops, as minutes at 100 °C</source>
        <translation>Für Hopfen, als Minuten bei 100 °C</translation>
    </message>
    <message>
        <source>Minutes at 100 °C add up, and compare one rig or day with another. They are no bitterness: what stays on hops, in trub and yeast and goes with foam, a quarter to a half, is not in them.</source>
        <translation>Minuten bei 100 °C addieren sich und vergleichen eine Anlage oder einen Tag mit einem anderen. Sie sind keine Bittere: Was an Hopfen, in Trub und Hefe bleibt und mit dem Schaum geht, ein Viertel bis die Hälfte, ist nicht darin.</translation>
    </message>
    <message>
        <source>As much as at 100 °C, %1</source>
        <translation>So viel wie bei 100 °C, %1</translation>
    </message>
    <message>
        <source>Of DMS&apos;s precursor about %1 is left after the boil. Once it is chilled about %2 of what it could have become is DMS in the wort; left to cool by itself, about %3.</source>
        <translation>Vom Vorläufer des DMS sind nach dem Kochen etwa %1 übrig. Nach dem Kühlen sind etwa %2 dessen, was daraus hätte werden können, als DMS in der Würze; sich selbst überlassen etwa %3.</translation>
    </message>
    <message>
        <source>Of DMS&apos;s precursor about %1 is left after the boil. Once it is cold about %2 of what it could have become is DMS in the wort.</source>
        <translation>Vom Vorläufer des DMS sind nach dem Kochen etwa %1 übrig. Ist die Würze kalt, sind etwa %2 dessen, was daraus hätte werden können, als DMS in ihr.</translation>
    </message>
    <message>
        <source>Of the precursor before it is heated up</source>
        <translation>Vom Vorläufer vor dem Aufheizen</translation>
    </message>
    <message>
        <source>The hot stand adds %1 for hops and %2 for DMS.</source>
        <translation>Das Heißhalten bringt %1 für Hopfen und %2 für DMS dazu.</translation>
    </message>
    <message>
        <source>There is no finished wort of which anything could be told.</source>
        <translation>Es gibt keine fertige Würze, von der sich etwas sagen ließe.</translation>
    </message>
    <message>
        <source>What do time and heat do to the wort?</source>
        <translation>Was machen Zeit und Hitze mit der Würze?</translation>
    </message>
    <message>
        <source>What of the wort?</source>
        <translation>Und die Würze?</translation>
    </message>
    <message>
        <source>What the day is worth for DMS to form</source>
        <translation>Was der Tag für die Bildung von DMS wert ist</translation>
    </message>
    <message>
        <source>What the day is worth for hops</source>
        <translation>Was der Tag für Hopfen wert ist</translation>
    </message>
    <message>
        <source>a boil worth as much as at sea level</source>
        <translation>ein Kochen, so viel wert wie auf Meereshöhe</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>alles zusammen</translation>
    </message>
    <message>
        <source>boil worth %1 at 100 °C</source>
        <translation>Kochen so viel wie %1 bei 100 °C</translation>
    </message>
    <message>
        <source>chilling</source>
        <translation>Kühlen</translation>
    </message>
    <message>
        <source>heating up</source>
        <translation>Aufheizen</translation>
    </message>
    <message>
        <source>hot stand</source>
        <translation>Heißhalten</translation>
    </message>
    <message>
        <source>left to cool by itself, instead</source>
        <translation>stattdessen von selbst abgekühlt</translation>
    </message>
    <message>
        <source>precursor left after the boil</source>
        <translation>Vorläufer, der nach dem Kochen übrig ist</translation>
    </message>
    <message>
        <source>still wort at worst, instead</source>
        <translation>stattdessen ruhende Würze, schlimmstenfalls</translation>
    </message>
    <message>
        <source>the boil</source>
        <translation>das Kochen</translation>
    </message>
    <message>
        <source>It steams without rolling: %1 evaporates. That carries less DMS off than a boil, and nothing stirs what is below the surface: more may stay than is told here.</source>
        <translation>Es dampft, ohne zu wallen: %1 verdunsten. Das trägt weniger DMS fort als ein Kochen, und nichts rührt, was unter der Oberfläche ist: Es kann mehr bleiben, als hier steht.</translation>
    </message>
    <message>
        <source>That is colder than the hops&apos; rate was measured, from %1 up.</source>
        <translation>Das ist kälter, als die Rate des Hopfens gemessen wurde, ab %1.</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis zu %1</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>about %1 to %2</source>
        <translation>etwa %1 bis %2</translation>
    </message>
    <message>
        <source>Sugar, or anything cold, makes boiling wort foam up, boil over and splash. Element off first, gloves on, stand back; add it slowly, stir until it has dissolved, and only then switch on again: sugar that sinks onto a hot element scorches (common practice, no source).</source>
        <translation>Zucker oder Kaltes lässt kochende Würze aufschäumen, überkochen und spritzen. Erst den Heizstab aus, Handschuhe an, Abstand halten; langsam zugeben, rühren, bis es gelöst ist, und erst dann wieder einschalten: Zucker, der auf einen heißen Heizstab sinkt, brennt an (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>with what was added</source>
        <translation>mit dem, was zugegeben wurde</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>hardly dips</source>
        <translation>kühlt kaum ab</translation>
    </message>
    <message>
        <source>dips by about %1, to %2</source>
        <translation>kühlt um etwa %1 ab, auf %2</translation>
    </message>
    <message>
        <source>rolls again within about a minute</source>
        <translation>wallt nach höchstens etwa einer Minute wieder</translation>
    </message>
    <message>
        <source>rolls again after about %1</source>
        <translation>wallt nach etwa %1 wieder</translation>
    </message>
    <message>
        <source>%1, and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>Right after it: %1 cold, %2 hot, gravity %3.</source>
        <translation>Gleich danach: %1 kalt, %2 heiß, Dichte %3.</translation>
    </message>
    <message>
        <source>is not likely to roll again before the end</source>
        <translation>wallt vor dem Ende wohl nicht wieder</translation>
    </message>
    <message>
        <source>may just roll again before the end</source>
        <translation>wallt vielleicht gerade noch vor dem Ende wieder</translation>
    </message>
    <message>
        <source>The mash&apos;s starch is done after %1 at the latest.</source>
        <translation>Die Stärke der Maische ist nach spätestens %1 verzuckert.</translation>
    </message>
    <message>
        <source>So cold nobody can tell how far its wort ferments.</source>
        <translation>Wie weit die Würze vergärt, kann bei so kühler Maische niemand sagen.</translation>
    </message>
    <message>
        <source>Its wort can ferment to about %1 to %2, as apparent attenuation.</source>
        <translation>Ihre Würze kann zu etwa %1 bis %2 vergären (scheinbarer Vergärungsgrad).</translation>
    </message>
    <message>
        <source>Its wort might ferment to about %1 to %2, as apparent attenuation; that was measured from %3 to %4 only.</source>
        <translation>Ihre Würze könnte zu etwa %1 bis %2 vergären (scheinbarer Vergärungsgrad); gemessen wurde das nur von %3 bis %4.</translation>
    </message>
    <message>
        <source>The mash is never above %1, where starch of some malts does not swell yet (from %2 to %3 on): only %4 to %5 of it may be reached, and the gravity be lower than planned.</source>
        <translation>Die Maische ist nie über %1, wo die Stärke mancher Malze noch nicht verkleistert (erst ab %2 bis %3): Womöglich werden nur %4 bis %5 davon erreicht, und die Stammwürze wird geringer als geplant.</translation>
    </message>
    <message>
        <source>What enzymes go on trimming in so many hours nobody has measured, and nothing is told of it.</source>
        <translation>Was Enzyme in so vielen Stunden weiter abbauen, hat niemand gemessen; dazu wird nichts gesagt.</translation>
    </message>
    <message>
        <source>What enzymes go on trimming in so many hours nobody has measured: 0 to %1 points more, at most %2.</source>
        <translation>Was Enzyme in so vielen Stunden weiter abbauen, hat niemand gemessen: 0 bis %1 Punkte mehr, höchstens %2.</translation>
    </message>
    <message>
        <source>For %1 it is at %2 to %3. What enzymes go on trimming in such hours nobody has measured: 0 to %4 points more, at most %5.</source>
        <translation>%1 lang hat sie %2 bis %3. Was Enzyme in solchen Stunden weiter abbauen, hat niemand gemessen: 0 bis %4 Punkte mehr, höchstens %5.</translation>
    </message>
    <message>
        <source>After %1 that nobody stirs, the middle of the grain may be %2 to %3 warmer than its side; all this is told of the mean.</source>
        <translation>Nach %1, in denen niemand rührt, kann die Mitte des Malzes %2 bis %3 wärmer sein als sein Rand; all dies gilt für das Mittel.</translation>
    </message>
    <message>
        <source>attenuation limit, at least</source>
        <translation>Endvergärungsgrad, mindestens</translation>
    </message>
    <message>
        <source>attenuation limit, at most</source>
        <translation>Endvergärungsgrad, höchstens</translation>
    </message>
    <message>
        <source>long hours may add to it up to</source>
        <translation>lange Stunden mögen zufügen bis zu</translation>
    </message>
    <message>
        <source>long hours add to it at most</source>
        <translation>lange Stunden fügen höchstens zu</translation>
    </message>
    <message>
        <source>gravity before it ferments</source>
        <translation>Dichte vor der Gärung</translation>
    </message>
    <message>
        <source>gravity at the limit, at least</source>
        <translation>Dichte endvergoren, mindestens</translation>
    </message>
    <message>
        <source>gravity at the limit, at most</source>
        <translation>Dichte endvergoren, höchstens</translation>
    </message>
    <message>
        <source>ferments to about %1 to %2</source>
        <translation>vergärt zu etwa %1 bis %2</translation>
    </message>
    <message>
        <source>How far wort ferments is known to 4 points either way at best, by malt and by model; yeast may stop before.</source>
        <translation>Wie weit Würze vergärt, ist bestenfalls auf 4 Punkte nach oben und unten bekannt, des Malzes und des Modells wegen; Hefe kann vorher aufhören.</translation>
    </message>
    <message>
        <source>The mash</source>
        <translation>Die Maische</translation>
    </message>
    <message>
        <source>starch reached, with common malt</source>
        <translation>erreichte Stärke, übliches Malz</translation>
    </message>
    <message>
        <source>starch reached, with malt that swells late</source>
        <translation>erreichte Stärke, spät verkleisterndes Malz</translation>
    </message>
    <message>
        <source>Mash: starch dissolves by Brandam et al. 2003 (from memory) as far as it is accessible, all of it at 63.4 °C and 3 °C sooner or later by malt (25 malts, Patindol et al. 2012). Two sets of constants for the enzymes, that one in dilute extract and one of the structure of Koljonen et al. 1995 (second hand) with as much beta-amylase as Muller 1991 found in a mash, 7 % of it stable.</source>
        <translation>Maische: Stärke löst sich nach Brandam et al. 2003 (aus dem Gedächtnis), soweit sie zugänglich ist, ganz bei 63,4 °C, je nach Malz 3 °C früher oder später (25 Malze, Patindol et al. 2012). Zwei Sätze von Konstanten für die Enzyme: dieser, in verdünntem Auszug, und einer vom Aufbau von Koljonen et al. 1995 (aus zweiter Hand) mit so viel beta-Amylase, wie Muller 1991 in einer Maische fand, davon 7 % beständig.</translation>
    </message>
    <message>
        <source>Attenuation: both sets were fitted (own) to 82 % at 65 °C and 50 % at 75 °C, taken as of an hour (Chandrasekhar, second hand). Trimming: 0.001 a minute at 65 °C, at most 0.002, is an estimate; no measured overnight mash was found. Not in it: pH, crush, how thick the mash is, what happens after the grain is lifted.</source>
        <translation>Vergärungsgrad: Beide Sätze sind angepasst (eigene Anpassung) an 82 % bei 65 °C und 50 % bei 75 °C, als Stundenwerte genommen (Chandrasekhar, aus zweiter Hand). Weiterer Abbau: 0,001 je Minute bei 65 °C, höchstens 0,002, ist geschätzt; eine gemessene Maische über Nacht fand sich nicht. Nicht darin: pH-Wert, Schrotung, wie dick die Maische ist und was nach dem Herausheben des Malzes geschieht.</translation>
    </message>
    <message>
        <source>An uneven bed: by conduction alone, 34 cm wide and high, at 67 °C first and in a room of 15 °C, with 1 to 10 W/(m²K) all round (own). Loose coarse grain mixes itself more.</source>
        <translation>Ungleich warmes Malzbett: durch Wärmeleitung allein, 34 cm breit und hoch, anfangs 67 °C in einem Raum von 15 °C, ringsum 1 bis 10 W/(m²K) (eigene Rechnung). Lockeres, grobes Malz mischt sich stärker.</translation>
    </message>
    <message>
        <source>The mash does not get all its starch: about %1 to %2 of it, by malt.</source>
        <translation>Die Maische bekommt nicht alle Stärke: je nach Malz etwa %1 bis %2 davon.</translation>
    </message>
    <message>
        <source>What goes in last leaves the wort at %1, and it does not boil again: whatever lives in that is not killed. Boil such water first and let it cool covered, with its lid loose.</source>
        <translation>Was zuletzt hineinkommt, lässt die Würze bei %1 zurück, und sie kocht nicht wieder: Was darin lebt, stirbt nicht ab. Solches Wasser vorher abkochen und zugedeckt abkühlen lassen, den Deckel lose.</translation>
    </message>
    <message>
        <source>%1 is what the wort of %2 has without chilling, by what goes in as the boil ends: colder than the %3 for pitching.</source>
        <translation>%1 hat die Würze von %2 ohne Kühlen, durch das, was zum Ende des Kochens hineinkommt: kälter als die %3 zum Anstellen.</translation>
    </message>
    <message>
        <source>%1 is what the wort of %2 has without chilling, by what goes in as the boil ends.</source>
        <translation>%1 hat die Würze von %2 ohne Kühlen, durch das, was zum Ende des Kochens hineinkommt.</translation>
    </message>
    <message>
        <source>Left to cool by itself, its lid as in the mash, it is at %1 after about %2.</source>
        <translation>Sich selbst überlassen, den Deckel wie beim Maischen, ist sie nach etwa %2 bei %1.</translation>
    </message>
    <message>
        <source>wort right after it</source>
        <translation>Würze gleich danach</translation>
    </message>
    <message>
        <source>rolls again after</source>
        <translation>wallt wieder nach</translation>
    </message>
    <message>
        <source>wort then, cold</source>
        <translation>Würze dann, kalt</translation>
    </message>
    <message>
        <source>gravity then</source>
        <translation>Dichte dann</translation>
    </message>
    <message>
        <source>%1, %2 before the end</source>
        <translation>%1, %2 vor dem Ende</translation>
    </message>
    <message>
        <source>a boil of %1</source>
        <translation>ein Kochen von %1</translation>
    </message>
    <message>
        <source>a boil of %1, if it rolls,</source>
        <translation>ein Kochen von %1, falls es wallt,</translation>
    </message>
    <message>
        <source>%1 in place of a boil</source>
        <translation>%1 anstelle eines Kochens</translation>
    </message>
    <message>
        <source>%1 of boil or what stands for it</source>
        <translation>%1 Kochen, oder was dafür steht,</translation>
    </message>
    <message>
        <source>%1 at 100 °C is what %2 is worth for hops, whichever rig.</source>
        <translation>%1 bei 100 °C ist %2 für Hopfen wert, mit jeder der Anlagen.</translation>
    </message>
    <message>
        <source>%1 at 100 °C is what %2 is worth for hops, with %3.</source>
        <translation>%1 bei 100 °C ist %2 für Hopfen wert, mit %3.</translation>
    </message>
    <message>
        <source>%1 at 100 °C is what %2 is worth for hops with %3: the least.</source>
        <translation>%1 bei 100 °C ist %2 für Hopfen wert mit %3: am wenigsten.</translation>
    </message>
    <message>
        <source>%1 at 100 °C is what %2 is worth for hops with %3: the most.</source>
        <translation>%1 bei 100 °C ist %2 für Hopfen wert mit %3: am meisten.</translation>
    </message>
    <message>
        <source>The boil of %1 at %2, if it rolls,</source>
        <translation>Das Kochen von %1 bei %2, falls es wallt,</translation>
    </message>
    <message>
        <source>The boil of %1 at %2</source>
        <translation>Das Kochen von %1 bei %2</translation>
    </message>
    <message>
        <source>What stands for the boil, %1 at %2,</source>
        <translation>Was für das Kochen steht, %1 bei %2,</translation>
    </message>
    <message>
        <source>What stands for the boil, %1 falling from %2 to %3,</source>
        <translation>Was für das Kochen steht, %1, von %2 auf %3 fallend,</translation>
    </message>
    <message>
        <source>What stands for the boil, %1 rising from %2 to %3,</source>
        <translation>Was für das Kochen steht, %1, von %2 auf %3 steigend,</translation>
    </message>
    <message>
        <source>%1 is worth %2 at 100 °C for hops; heating up to it adds %3.</source>
        <translation>%1 ist %2 bei 100 °C für Hopfen wert; das Aufheizen dahin bringt %3 dazu.</translation>
    </message>
    <message>
        <source>%1 is worth %2 at 100 °C for hops and %3 for DMS to form; heating up to it adds %4 and %5.</source>
        <translation>%1 ist %2 bei 100 °C für Hopfen wert und %3 für die Bildung von DMS; das Aufheizen dahin bringt %4 und %5 dazu.</translation>
    </message>
    <message>
        <source>Part of that is colder than the hops&apos; rate was measured, from %1 up.</source>
        <translation>Ein Teil davon ist kälter, als die Rate des Hopfens gemessen wurde (ab %1).</translation>
    </message>
    <message>
        <source>The hot stand adds %1 for hops.</source>
        <translation>Das Heißhalten bringt %1 für Hopfen dazu.</translation>
    </message>
    <message>
        <source>Left to cool by itself, as planned, it gets %1 more for late hops.</source>
        <translation>Wie geplant sich selbst überlassen, kommen %1 für späten Hopfen dazu.</translation>
    </message>
    <message>
        <source>Left to cool by itself, as planned, it gets %1 more for late hops and %2 more for DMS.</source>
        <translation>Wie geplant sich selbst überlassen, kommen %1 für späten Hopfen und %2 für DMS dazu.</translation>
    </message>
    <message>
        <source>Chilling adds %1 for late hops; left to cool by itself instead it would be %2.</source>
        <translation>Das Kühlen bringt %1 für späten Hopfen dazu; stattdessen sich selbst überlassen wären es %2.</translation>
    </message>
    <message>
        <source>Chilling adds %1 for late hops and %2 for DMS; left to cool by itself instead it would be %3 and %4.</source>
        <translation>Das Kühlen bringt %1 für späten Hopfen und %2 für DMS dazu; stattdessen sich selbst überlassen wären es %3 und %4.</translation>
    </message>
    <message>
        <source>%1 evaporates, whether it rolls or not, which nobody can say. If it only steams, that carries less DMS off than a boil, and more may stay than is told here.</source>
        <translation>%1 verdunsten, ob es wallt oder nicht, was niemand sagen kann. Dampft es nur, trägt das weniger DMS fort als ein Kochen, und es kann mehr bleiben, als hier steht.</translation>
    </message>
    <message>
        <source>Below %1 bitter acids still form slowly, but bitterness no longer follows them: no units of it should be reckoned from there.</source>
        <translation>Unter %1 entstehen Bittersäuren noch langsam, aber die Bittere folgt ihnen nicht mehr: Bittereinheiten sollte man von dort keine errechnen.</translation>
    </message>
    <message>
        <source>Hops: alpha acids to iso-alpha acids by Malowicki &amp; Shellhammer 2005, measured at 90 to 130 °C and pH 5.2; colder that is extended.</source>
        <translation>Hopfen: Alphasäuren zu Iso-Alphasäuren nach Malowicki &amp; Shellhammer 2005, gemessen bei 90 bis 130 °C und pH 5,2; kälter ist das fortgesetzt.</translation>
    </message>
    <message>
        <source>Precursor of DMS: S-methyl methionine, half of it in 35 min at 100 °C (Wilson &amp; Booer 1979) and in twice that 6 °C cooler (Fix 1999). DMS leaves with the vapour by 63.5 times the share of the wort that evaporates, from 0.18 a minute at 17 %/h (Wilson &amp; Booer 1979; derived); laboratory kettles kept more (Desobgo et al. 2015). After the boil it is taken to stay, as under a lid (Anness &amp; Bamforth 1982). How much precursor malt brings is not known here.</source>
        <translation>Vorläufer von DMS: S-Methylmethionin, die Hälfte in 35 min bei 100 °C (Wilson &amp; Booer 1979) und in der doppelten Zeit bei 6 °C weniger (Fix 1999). DMS geht mit dem Dampf um das 63,5-Fache des Anteils der Würze, der verdampft, aus 0,18 je Minute bei 17 %/h (Wilson &amp; Booer 1979; abgeleitet); Laborkessel behielten mehr (Desobgo et al. 2015). Nach dem Kochen wird angenommen, dass es bleibt, wie unter einem Deckel (Anness &amp; Bamforth 1982). Wie viel Vorläufer das Malz mitbringt, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>of that left by itself, below %1</source>
        <translation>davon, von selbst abgekühlt, unter %1</translation>
    </message>
    <message>
        <source>The mash is never above %1: hardly any starch swells so cold (from %2 to %3 on, by malt), and there may be next to no sugar of it.</source>
        <translation>Die Maische ist nie über %1: So kalt verkleistert kaum Stärke (erst ab %2 bis %3, je nach Malz), und es wird womöglich fast kein Zucker daraus.</translation>
    </message>
    <message>
        <source>The mash&apos;s starch is done after about %1 with common malt, after %2 at the latest.</source>
        <translation>Die Stärke der Maische ist mit üblichem Malz nach etwa %1 verzuckert, spätestens nach %2.</translation>
    </message>
    <message>
        <source>With common malt the starch is done after about %1; malt that swells late may take longer than this mash does.</source>
        <translation>Mit üblichem Malz ist die Stärke nach etwa %1 verzuckert; spät verkleisterndes Malz braucht womöglich länger, als diese Maische dauert.</translation>
    </message>
    <message>
        <source>With common malt the starch is done after about %1; malt that swells late leaves up to %2.</source>
        <translation>Mit üblichem Malz ist die Stärke nach etwa %1 verzuckert; spät verkleisterndes Malz lässt bis zu %2 zurück.</translation>
    </message>
    <message>
        <source>After %1 that nobody stirs, the middle of the grain may be %2 to %3 warmer than its side, and of longer no range is known; all this is told of the mean.</source>
        <translation>Nach %1, in denen niemand rührt, kann die Mitte des Malzes %2 bis %3 wärmer sein als sein Rand, und für länger ist keine Spanne bekannt; all dies gilt für das Mittel.</translation>
    </message>
    <message>
        <source>starch done after, with common malt</source>
        <translation>Stärke verzuckert nach, übliches Malz</translation>
    </message>
    <message>
        <source>starch done after, with malt that swells late</source>
        <translation>Stärke verzuckert nach, spät verkleisterndes Malz</translation>
    </message>
    <message>
        <source>time at %1 to %2</source>
        <translation>Zeit bei %1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2 is about how far the mash&apos;s wort ferments, whichever rig.</source>
        <translation>%1 bis %2 vergärt die Würze der Maische etwa, mit jeder der Anlagen.</translation>
    </message>
    <message>
        <source>%1 to %2 is about how far the mash&apos;s wort ferments, with %3.</source>
        <translation>%1 bis %2 vergärt die Würze der Maische etwa, mit %3.</translation>
    </message>
    <message>
        <source>worth %1 at 100 °C</source>
        <translation>%1 bei 100 °C wert</translation>
    </message>
    <message>
        <source>With %1, the wort %2.</source>
        <translation>Mit %1: Die Würze %2.</translation>
    </message>
    <message>
        <source>%1, when the boil ends</source>
        <translation>%1, am Ende des Kochens</translation>
    </message>
    <message>
        <source>On the edge of worth it: %1 of the time from mash to boil.</source>
        <translation>Ob er sich lohnt, steht auf der Kippe: %1 der Zeit von der Maische bis zum Kochen.</translation>
    </message>
    <message>
        <source>On the edge of worth it: %1 of the time to strike.</source>
        <translation>Ob er sich lohnt, steht auf der Kippe: %1 der Zeit bis zum Einmaischen.</translation>
    </message>
    <message>
        <source>On the edge of worth it: %1 of the time from mash to boil, where more than %2 counts as worth it, and losses are known to about a fifth.</source>
        <translation>Ob er sich lohnt, steht auf der Kippe: %1 der Zeit von der Maische bis zum Kochen, wo mehr als %2 als lohnend gilt und Verluste auf etwa ein Fünftel bekannt sind.</translation>
    </message>
    <message>
        <source>On the edge of worth it: %1 of the time to strike, where more than %2 counts as worth it, and losses are known to about a fifth.</source>
        <translation>Ob er sich lohnt, steht auf der Kippe: %1 der Zeit bis zum Einmaischen, wo mehr als %2 als lohnend gilt und Verluste auf etwa ein Fünftel bekannt sind.</translation>
    </message>
    <message>
        <source>%1 from mash to boil and %2 a batch is what %4 saves with %3: on the edge of worth it for the time, about %5 of a heat-up, and worth it for the heat it holds.</source>
        <translation>%1 von der Maische bis zum Kochen und %2 je Sud spart %4 mit %3: Ob er sich der Zeit wegen lohnt, steht auf der Kippe, etwa %5 eines Aufheizens; für die Wärme, die er hält, lohnt er sich.</translation>
    </message>
    <message>
        <source>%1 from mash to boil and %2 a batch is what %4 saves with %3: on the edge of worth it, about %5 of a heat-up.</source>
        <translation>%1 von der Maische bis zum Kochen und %2 je Sud spart %4 mit %3: Ob er sich lohnt, steht auf der Kippe, etwa %5 eines Aufheizens.</translation>
    </message>
    <message>
        <source>on the edge, %1 sooner</source>
        <translation>knapp, %1 früher</translation>
    </message>
    <message>
        <source>heating the rinsing water</source>
        <translation>Nachgusswasser erhitzen</translation>
    </message>
    <message>
        <source>while the grain drains</source>
        <translation>während das Malz abtropft</translation>
    </message>
    <message>
        <source>of that, heating the rinsing water</source>
        <translation>davon für das Nachgusswasser</translation>
    </message>
    <message>
        <source>with the rinsing water</source>
        <translation>mit dem Nachgusswasser</translation>
    </message>
    <message>
        <source>Rinsed with %1, the wort is about %2 cold, %3 hot, at about %4 and gravity %5: %6 if the water ran past all the wort in the grain, %7 if it mixed with all of it.</source>
        <translation>Nach dem Abspülen mit %1 sind es etwa %2 Würze kalt, %3 heiß, mit etwa %4 und einer Dichte von %5: %6, wenn das Wasser an aller Würze im Malz vorbeiliefe, %7, wenn es sich mit aller mischte.</translation>
    </message>
    <message>
        <source>It washes about %1 of extract out of the grain, between none and %2; about %3 stay in it.</source>
        <translation>Es wäscht etwa %1 Extrakt aus dem Malz, zwischen keinem und %2; etwa %3 bleiben darin.</translation>
    </message>
    <message>
        <source>Its water is not heated by electricity: what that takes is in no figure of energy or money here.</source>
        <translation>Das Wasser dafür wird nicht mit Strom erhitzt: Was das braucht, steckt hier in keiner Zahl für Energie oder Geld.</translation>
    </message>
    <message>
        <source>Heating its water takes %1 from the wall beside the kettle&apos;s element, at an efficiency of %2; for how long is not known, as its heater&apos;s power is not stated.</source>
        <translation>Das Wasser dafür zu erhitzen braucht %1 aus der Steckdose neben dem Heizelement des Kessels, bei einem Wirkungsgrad von %2; wie lange, ist nicht bekannt, da die Leistung dafür nicht angegeben ist.</translation>
    </message>
    <message>
        <source>Heating its water takes %1 from the wall beside the kettle&apos;s element, at an efficiency of %2, for about %3 before the grain is lifted.</source>
        <translation>Das Wasser dafür zu erhitzen braucht %1 aus der Steckdose neben dem Heizelement des Kessels, bei einem Wirkungsgrad von %2, etwa %3 lang vor dem Herausheben.</translation>
    </message>
    <message>
        <source>The grain drains for %1 over the open kettle with the element on: the wort goes from %2 to %3.</source>
        <translation>Das Malz tropft %1 über dem offenen Kessel ab, das Heizelement an: Die Würze geht von %2 auf %3.</translation>
    </message>
    <message>
        <source>The grain drains for %1 over the open kettle with the element off: the wort goes from %2 to %3.</source>
        <translation>Das Malz tropft %1 über dem offenen Kessel ab, das Heizelement aus: Die Würze geht von %2 auf %3.</translation>
    </message>
    <message>
        <source>However long it drains, it keeps what the plan&apos;s absorption says: no source tells how much less that would be.</source>
        <translation>Wie lange es auch abtropft, es behält, was der Plan als Aufnahme angibt: Keine Quelle sagt, wie viel weniger das wäre.</translation>
    </message>
    <message>
        <source>%1 of water at %2</source>
        <translation>%1 Wasser mit %2</translation>
    </message>
    <message>
        <source>when it is rinsed</source>
        <translation>nach dem Abspülen</translation>
    </message>
    <message>
        <source>wort then, mixed</source>
        <translation>Würze dann, gemischt</translation>
    </message>
    <message>
        <source>gravity if the water ran past</source>
        <translation>Dichte, wenn das Wasser vorbeiliefe</translation>
    </message>
    <message>
        <source>gravity if it mixed with all</source>
        <translation>Dichte, wenn es sich mit allem mischte</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>abgetropft</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Abtropfen</translation>
    </message>
    <message>
        <source>Lifted grain is heavy, and hot wort and water run from it: hang it from something made for its weight, never stand or reach under it, wear long gloves, and pour rinsing water slowly and from a small jug: over a hot bag or basket it splashes and scalds.</source>
        <translation>Herausgehobenes Malz ist schwer, und heiße Würze und heißes Wasser laufen heraus: Hängen Sie es an etwas, das für sein Gewicht gemacht ist, stehen und greifen Sie nie darunter, tragen Sie lange Handschuhe, und gießen Sie Nachgusswasser langsam und aus einer kleinen Kanne: Über einem heißen Beutel oder Korb spritzt und verbrüht es.</translation>
    </message>
    <message>
        <source>An element that stays on while the grain drains has less wort above it than before: look that it is covered before the grain is out, or switch it off.</source>
        <translation>Über einem Heizelement, das beim Abtropfen an bleibt, steht weniger Würze als vorher: Sehen Sie nach, dass es bedeckt ist, ehe das Malz heraus ist, oder schalten Sie es aus.</translation>
    </message>
    <message>
        <source>rinsed with %1</source>
        <translation>abgespült mit %1</translation>
    </message>
    <message>
        <source>drained %1</source>
        <translation>abgetropft %1</translation>
    </message>
    <message>
        <source>%1 of that are the rinsing water&apos;s heater.</source>
        <translation>%1 davon sind das Heizgerät für das Nachgusswasser.</translation>
    </message>
    <message>
        <source>The rinsing water&apos;s heater on the same circuit comes on top of that.</source>
        <translation>Das Heizgerät für das Nachgusswasser am selben Stromkreis kommt noch dazu.</translation>
    </message>
    <message>
        <source>%1 of that are for what else runs on the circuit.</source>
        <translation>Davon sind %1 für anderes, was am Stromkreis läuft.</translation>
    </message>
    <message>
        <source>What if: the same heat otherwise</source>
        <translation>Was wäre, wenn: dieselbe Wärme anders</translation>
    </message>
    <message>
        <source>by induction, %1 to %2 of it in the vessel</source>
        <translation>mit Induktion, %1 bis %2 davon im Kessel</translation>
    </message>
    <message>
        <source>on a hot plate, %1 to %2</source>
        <translation>auf einer Kochplatte, %1 bis %2</translation>
    </message>
    <message>
        <source>on a gas flame, %1 to %2</source>
        <translation>auf einer Gasflamme, %1 bis %2</translation>
    </message>
    <message>
        <source>that flame&apos;s propane</source>
        <translation>Propan dieser Flamme</translation>
    </message>
    <message>
        <source>What if it were heated otherwise: the same heat into the same vessel in the same time, by published shares of what reaches a vessel (ENERGY STAR, US Department of Energy; a gas ring as measured). Gas has another price and another account of carbon dioxide: neither is compared.</source>
        <translation>Anders geheizt: dieselbe Wärme in denselben Kessel in derselben Zeit, nach veröffentlichten Anteilen, die einen Kessel erreichen (ENERGY STAR, US-Energieministerium; ein Gasring wie gemessen). Gas hat einen anderen Preis und eine andere Rechnung für Kohlendioxid: beides wird nicht verglichen.</translation>
    </message>
    <message>
        <source>A flame heats the room more than the wort, takes its air and can fill it with carbon monoxide: outdoors, or where the maker of the burner allows it.</source>
        <translation>Eine Flamme heizt den Raum mehr als die Würze, verbraucht seine Luft und kann ihn mit Kohlenmonoxid füllen: im Freien, oder wo der Hersteller des Brenners es erlaubt.</translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>stainless steel</source>
        <translation>Edelstahl</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>Kupfer</translation>
    </message>
    <message>
        <source>enamelled steel</source>
        <translation>emaillierter Stahl</translation>
    </message>
    <message>
        <source>polypropylene</source>
        <translation>Polypropylen</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>closed-cell rubber foam</source>
        <translation>geschlossenzelliger Gummischaum</translation>
    </message>
    <message>
        <source>elastomeric foam, flexible</source>
        <translation>Elastomerschaum, biegsam</translation>
    </message>
    <message>
        <source>foam rubber</source>
        <translation>Schaumgummi</translation>
    </message>
    <message>
        <source>expanded rubber</source>
        <translation>Zellgummi</translation>
    </message>
    <message>
        <source>neoprene foam</source>
        <translation>Neoprenschaum</translation>
    </message>
    <message>
        <source>neoprene, solid</source>
        <translation>Neopren, fest</translation>
    </message>
    <message>
        <source>natural rubber</source>
        <translation>Naturkautschuk</translation>
    </message>
    <message>
        <source>silicone</source>
        <translation>Silikon</translation>
    </message>
    <message>
        <source>silicone foam</source>
        <translation>Silikonschaum</translation>
    </message>
    <message>
        <source>polyurethane foam</source>
        <translation>Polyurethanschaum</translation>
    </message>
    <message>
        <source>polyethylene foam</source>
        <translation>Polyethylenschaum</translation>
    </message>
    <message>
        <source>extruded polystyrene</source>
        <translation>extrudiertes Polystyrol</translation>
    </message>
    <message>
        <source>mineral wool</source>
        <translation>Mineralwolle</translation>
    </message>
    <message>
        <source>cork</source>
        <translation>Kork</translation>
    </message>
    <message>
        <source>wool felt</source>
        <translation>Wollfilz</translation>
    </message>
    <message>
        <source>fleece blanket</source>
        <translation>Fleecedecke</translation>
    </message>
    <message>
        <source>cotton blanket</source>
        <translation>Baumwolldecke</translation>
    </message>
    <message>
        <source>reflective bubble wrap</source>
        <translation>spiegelnde Luftpolsterfolie</translation>
    </message>
    <message>
        <source>air gap</source>
        <translation>Luftspalt</translation>
    </message>
    <message>
        <source>pine</source>
        <translation>Kiefer</translation>
    </message>
    <message>
        <source>oak</source>
        <translation>Eiche</translation>
    </message>
    <message>
        <source>plywood</source>
        <translation>Sperrholz</translation>
    </message>
    <message>
        <source>concrete</source>
        <translation>Beton</translation>
    </message>
    <message>
        <source>ceramic tile</source>
        <translation>Keramikfliese</translation>
    </message>
    <message>
        <source>steel plate</source>
        <translation>Stahlplatte</translation>
    </message>
    <message>
        <source>PVC</source>
        <translation>PVC</translation>
    </message>
    <message>
        <source>bright</source>
        <translation>blank</translation>
    </message>
    <message>
        <source>brushed</source>
        <translation>gebürstet</translation>
    </message>
    <message>
        <source>dull</source>
        <translation>matt</translation>
    </message>
    <message>
        <source>painted</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>anodised</source>
        <translation>eloxiert</translation>
    </message>
    <message>
        <source>blackened</source>
        <translation>geschwärzt</translation>
    </message>
    <message>
        <source>enamel</source>
        <translation>Emaille</translation>
    </message>
    <message>
        <source>plastic</source>
        <translation>Kunststoff</translation>
    </message>
    <message>
        <source>foil</source>
        <translation>Folie</translation>
    </message>
    <message>
        <source>aluminium sheet</source>
        <translation>Aluminiumblech</translation>
    </message>
    <message>
        <source>lacquered</source>
        <translation>lackiert</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Klebeband</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>rubber</source>
        <translation>Gummi</translation>
    </message>
    <message>
        <source>bright steel</source>
        <translation>blanker Stahl</translation>
    </message>
    <message>
        <source>emissivity %1</source>
        <translation>Emissionsgrad %1</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>thick floor</source>
        <translation>dicker Boden</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>Beine</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>base</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>one outlet</source>
        <translation>eine Steckdose</translation>
    </message>
    <message>
        <source>several outlets</source>
        <translation>mehrere Steckdosen</translation>
    </message>
    <message>
        <source>building wire</source>
        <translation>Installationsleitung</translation>
    </message>
    <message>
        <source>cord</source>
        <translation>Anschlussleitung</translation>
    </message>
    <message>
        <source>extension set</source>
        <translation>Verlängerung</translation>
    </message>
    <message>
        <source>parallel</source>
        <translation>parallel</translation>
    </message>
    <message>
        <source>series</source>
        <translation>in Reihe</translation>
    </message>
    <message>
        <source>two circuits</source>
        <translation>zwei Stromkreise</translation>
    </message>
    <message>
        <source>weekday</source>
        <translation>Werktag</translation>
    </message>
    <message>
        <source>weekend</source>
        <translation>Wochenende</translation>
    </message>
    <message>
        <source>UK 230 V 13 A plug</source>
        <translation>Großbritannien 230 V 13 A, Stecker</translation>
    </message>
    <message>
        <source>20 L steel pot</source>
        <translation>Stahltopf, 20 L</translation>
    </message>
    <message>
        <source>30 L double-wall urn</source>
        <translation>doppelwandiger Einkocher, 30 L</translation>
    </message>
    <message>
        <source>35 L all-in-one kettle</source>
        <translation>All-in-one-Kessel, 35 L</translation>
    </message>
    <message>
        <source>40 L steel kettle</source>
        <translation>Stahlkessel, 40 L</translation>
    </message>
    <message>
        <source>60 L steel kettle</source>
        <translation>Stahlkessel, 60 L</translation>
    </message>
    <message>
        <source>70 L steel kettle</source>
        <translation>Stahlkessel, 70 L</translation>
    </message>
    <message>
        <source>a stock pot with an immersion heater hung in</source>
        <translation>ein Suppentopf mit eingehängtem Tauchsieder</translation>
    </message>
    <message>
        <source>a tea urn or all-in-one kettle: heater below the base, air gap behind a steel shell</source>
        <translation>ein Einkocher oder All-in-one-Kessel: Heizung unter dem Boden, Luftspalt hinter einem Stahlmantel</translation>
    </message>
    <message>
        <source>single wall, heater below the base, pump and hose</source>
        <translation>einwandig, Heizung unter dem Boden, Pumpe und Schlauch</translation>
    </message>
    <message>
        <source>a brewing kettle with a screwed-in element</source>
        <translation>ein Braukessel mit eingeschraubtem Heizelement</translation>
    </message>
    <message>
        <source>a wide kettle on legs</source>
        <translation>ein breiter Kessel auf Füßen</translation>
    </message>
    <message>
        <source>North America 120 V 15 A</source>
        <translation>Nordamerika 120 V 15 A</translation>
    </message>
    <message>
        <source>North America 120 V 20 A</source>
        <translation>Nordamerika 120 V 20 A</translation>
    </message>
    <message>
        <source>North America 208 V 20 A</source>
        <translation>Nordamerika 208 V 20 A</translation>
    </message>
    <message>
        <source>North America 208 V 30 A</source>
        <translation>Nordamerika 208 V 30 A</translation>
    </message>
    <message>
        <source>North America 240 V 20 A</source>
        <translation>Nordamerika 240 V 20 A</translation>
    </message>
    <message>
        <source>North America 240 V 30 A</source>
        <translation>Nordamerika 240 V 30 A</translation>
    </message>
    <message>
        <source>North America 240 V 50 A</source>
        <translation>Nordamerika 240 V 50 A</translation>
    </message>
    <message>
        <source>Europe 230 V 16 A</source>
        <translation>Europa 230 V 16 A</translation>
    </message>
    <message>
        <source>Switzerland 230 V 10 A</source>
        <translation>Schweiz 230 V 10 A</translation>
    </message>
    <message>
        <source>Switzerland 230 V 16 A</source>
        <translation>Schweiz 230 V 16 A</translation>
    </message>
    <message>
        <source>Australia/New Zealand 230 V 10 A</source>
        <translation>Australien/Neuseeland 230 V 10 A</translation>
    </message>
    <message>
        <source>Australia/New Zealand 230 V 15 A</source>
        <translation>Australien/Neuseeland 230 V 15 A</translation>
    </message>
    <message>
        <source>Japan 100 V 15 A</source>
        <translation>Japan 100 V 15 A</translation>
    </message>
    <message>
        <source>Japan 100 V 20 A</source>
        <translation>Japan 100 V 20 A</translation>
    </message>
    <message>
        <source>Japan 200 V 20 A</source>
        <translation>Japan 200 V 20 A</translation>
    </message>
    <message>
        <source>IEC 60309 230 V 16 A</source>
        <translation>IEC 60309 230 V 16 A</translation>
    </message>
    <message>
        <source>IEC 60309 230 V 32 A</source>
        <translation>IEC 60309 230 V 32 A</translation>
    </message>
    <message>
        <source>European Union average 2025</source>
        <translation>Durchschnitt der Europäischen Union 2025</translation>
    </message>
    <message>
        <source>Germany average 2025</source>
        <translation>Durchschnitt in Deutschland 2025</translation>
    </message>
    <message>
        <source>United States average 2024</source>
        <translation>Durchschnitt der Vereinigten Staaten 2024</translation>
    </message>
    <message>
        <source>Ontario tiered, winter 2024</source>
        <translation>Ontario, nach Verbrauch gestaffelt, Winter 2024</translation>
    </message>
    <message>
        <source>Ontario time of use, winter 2024</source>
        <translation>Ontario, nach Tageszeit, Winter 2024</translation>
    </message>
    <message>
        <source>Ontario ultra-low overnight 2024</source>
        <translation>Ontario, besonders günstige Nacht, 2024</translation>
    </message>
    <message>
        <source>Average of all residential customers, one price at all hours. States differ by more than half of it either way (April 2025: Connecticut 32.28, Missouri 12.83 US cents). An average contains fixed charges, so the next kWh costs a little less.</source>
        <translation>Durchschnitt aller Haushaltskunden, ein Preis zu allen Stunden. Einzelne Bundesstaaten weichen um mehr als die Hälfte nach oben oder unten ab (April 2025: Connecticut 32,28, Missouri 12,83 US-Cent). Ein Durchschnitt enthält feste Gebühren, die nächste kWh kostet also etwas weniger.</translation>
    </message>
    <message>
        <source>Average of households in the first half of 2025, taxes included, one price at all hours.</source>
        <translation>Durchschnitt der Haushalte im ersten Halbjahr 2025 mit Steuern, ein Preis zu allen Stunden.</translation>
    </message>
    <message>
        <source>Average of households in the first half of 2025, taxes included, one price at all hours. Countries differ much (Germany 38.35, Hungary 10.40 euro cents).</source>
        <translation>Durchschnitt der Haushalte im ersten Halbjahr 2025 mit Steuern, ein Preis zu allen Stunden. Die Länder unterscheiden sich stark (Deutschland 38,35, Ungarn 10,40 Eurocent).</translation>
    </message>
    <message>
        <source>Regulated price by the hour with a cheap night and a dear evening, from 1 November 2024. Energy only. That the night is as cheap at a weekend is from memory.</source>
        <translation>Regulierter Preis nach Stunden mit günstiger Nacht und teurem Abend, ab 1. November 2024. Nur die Energie. Dass die Nacht am Wochenende ebenso günstig ist, stammt aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Regulated price by the hour, winter months from 1 November 2024. Energy only: delivery, regulatory charges, tax and the provincial rebate are not in it. Summer moves the dear hours; a public holiday is priced as a weekend: state &quot;day&quot;: &quot;weekend&quot; for one.</source>
        <translation>Regulierter Preis nach Stunden, Wintermonate ab 1. November 2024. Nur die Energie: Netz, Umlagen, Steuer und der Nachlass der Provinz sind nicht enthalten. Im Sommer liegen die teuren Stunden anders; ein Feiertag kostet wie ein Wochenende: Geben Sie dafür &quot;day&quot;: &quot;weekend&quot; an.</translation>
    </message>
    <message>
        <source>Regulated price by the month&apos;s use, winter months from 1 November 2024; in summer the first tier ends earlier. Energy only. State &quot;used_this_month&quot; to say where in the month the brew falls.</source>
        <translation>Regulierter Preis nach dem Verbrauch des Monats, Wintermonate ab 1. November 2024; im Sommer endet die erste Stufe früher. Nur die Energie. Geben Sie mit &quot;used_this_month&quot; an, wo im Monat der Sud liegt.</translation>
    </message>
    <message>
        <source>off-peak</source>
        <translation>Schwachlast</translation>
    </message>
    <message>
        <source>mid-peak</source>
        <translation>Mittellast</translation>
    </message>
    <message>
        <source>on-peak</source>
        <translation>Spitzenlast</translation>
    </message>
    <message>
        <source>ultra-low overnight</source>
        <translation>besonders günstige Nacht</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>design value, on the safe side of most products</source>
        <translation>Bemessungswert, bei den meisten Produkten auf der sicheren Seite</translation>
    </message>
    <message>
        <source>design value; fresh rigid foam insulates better, about 0.025 W/(m K)</source>
        <translation>Bemessungswert; frischer Hartschaum dämmt besser, etwa 0,025 W/(m K)</translation>
    </message>
    <message>
        <source>softens above about 75 C: for a jacket with an air gap or over another layer only</source>
        <translation>wird über etwa 75 C weich: nur für einen Mantel mit Luftspalt oder über einer anderen Schicht</translation>
    </message>
    <message>
        <source>dry and loose; pressed tight or damp it insulates far less</source>
        <translation>trocken und locker; fest gedrückt oder feucht dämmt es viel weniger</translation>
    </message>
    <message>
        <source>with still-air gaps kept beside the foil state its R instead; a plastic film over the foil raises the emissivity</source>
        <translation>bleiben neben der Folie ruhende Luftspalte, geben Sie stattdessen ihren R-Wert an; ein Kunststofffilm über der Folie erhöht den Emissionsgrad</translation>
    </message>
    <message>
        <source>between dark faces; between two bright ones about 0.035 W/(m K), own estimate</source>
        <translation>zwischen dunklen Flächen; zwischen zwei blanken etwa 0,035 W/(m K), eigene Schätzung</translation>
    </message>
    <message>
        <source>a double socket is type-tested at 20 A in all (BS 1363-2:1995)</source>
        <translation>eine Doppelsteckdose ist mit insgesamt 20 A typgeprüft (BS 1363-2:1995)</translation>
    </message>
    <message>
        <source>household sockets are not made for hours at 16 A; about 10 A is a common planning figure for long use</source>
        <translation>Haushaltssteckdosen sind nicht für Stunden mit 16 A gemacht; etwa 10 A sind eine übliche Planungszahl für lange Nutzung</translation>
    </message>
    <message>
        <source>1500 W for both sockets of a pair together</source>
        <translation>1500 W für beide Steckdosen eines Paars zusammen</translation>
    </message>
    <message>
        <source>Brazil 127 V 10 A</source>
        <translation>Brasilien 127 V 10 A</translation>
    </message>
    <message>
        <source>Brazil 127 V 20 A</source>
        <translation>Brasilien 127 V 20 A</translation>
    </message>
    <message>
        <source>Brazil 220 V 10 A</source>
        <translation>Brasilien 220 V 10 A</translation>
    </message>
    <message>
        <source>Brazil 220 V 20 A</source>
        <translation>Brasilien 220 V 20 A</translation>
    </message>
    <message>
        <source>Mexico 127 V 15 A</source>
        <translation>Mexiko 127 V 15 A</translation>
    </message>
    <message>
        <source>Mexico 127 V 20 A</source>
        <translation>Mexiko 127 V 20 A</translation>
    </message>
    <message>
        <source>Mexico 220 V 30 A</source>
        <translation>Mexiko 220 V 30 A</translation>
    </message>
    <message>
        <source>above the wort</source>
        <translation>über der Würze</translation>
    </message>
    <message>
        <source>below the wort</source>
        <translation>unter der Würze</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>Spirale</translation>
    </message>
    <message>
        <source>counterflow</source>
        <translation>Gegenstrom</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>still</source>
        <translation>ruhend</translation>
    </message>
    <message>
        <source>stirred</source>
        <translation>gerührt</translation>
    </message>
    <message>
        <source>same circuit</source>
        <translation>gleicher Stromkreis</translation>
    </message>
    <message>
        <source>another circuit</source>
        <translation>anderer Stromkreis</translation>
    </message>
    <message>
        <source>not electric</source>
        <translation>nicht elektrisch</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>on</source>
        <translation>an</translation>
    </message>
</context>
<context>
    <name>Circuit</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 with %2: %3.</source>
        <translation>%1 mit %2: %3.</translation>
    </message>
    <message>
        <source>Judged by %1, for planning only.</source>
        <translation>Beurteilt nach %1, nur zur Planung.</translation>
    </message>
    <message>
        <source>Current over the day</source>
        <translation>Strom über den Tag</translation>
    </message>
    <message>
        <source>% of the circuit&apos;s rating; the mean, where the element switches on and off</source>
        <translation>% des Nennstroms; das Mittel, wo das Heizelement ein- und ausschaltet</translation>
    </message>
    <message>
        <source>its second circuit</source>
        <translation>ihr zweiter Stromkreis</translation>
    </message>
    <message>
        <source>not for long use, from %1 on</source>
        <translation>nicht auf Dauer, ab %1</translation>
    </message>
    <message>
        <source>what the circuit is rated for</source>
        <translation>Nennstrom des Stromkreises</translation>
    </message>
    <message>
        <source>Hours of current</source>
        <translation>Stunden unter Strom</translation>
    </message>
    <message>
        <source>full current without a break</source>
        <translation>voller Strom ohne Pause</translation>
    </message>
    <message>
        <source>switching: current flows</source>
        <translation>schaltend: Strom fließt</translation>
    </message>
    <message>
        <source>switching: no current</source>
        <translation>schaltend: kein Strom</translation>
    </message>
    <message>
        <source>element off</source>
        <translation>Heizelement aus</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>next standard breaker, for information</source>
        <translation>nächste übliche Sicherung, zur Kenntnis</translation>
    </message>
    <message>
        <source>the same, counted as long use</source>
        <translation>dieselbe, als Dauerlast gezählt</translation>
    </message>
    <message>
        <source>The next standard breakers and their conductors are information, not to be installed by this.</source>
        <translation>Die nächsten üblichen Sicherungen und ihre Leiter dienen der Kenntnis; danach ist nichts zu installieren.</translation>
    </message>
    <message>
        <source>%1 circuit %2</source>
        <translation>%1 Stromkreis %2</translation>
    </message>
    <message>
        <source>%1 to %2 of supply (%3), the element&apos;s tolerance included</source>
        <translation>%1 bis %2 Netzspannung (%3), mit der Toleranz des Heizelements</translation>
    </message>
    <message>
        <source>The rig&apos;s own power on two such circuits</source>
        <translation>Die eigene Leistung auf zwei solchen Stromkreisen</translation>
    </message>
    <message>
        <source>all rules together</source>
        <translation>alle Regeln zusammen</translation>
    </message>
    <message>
        <source>%1 on circuit %2 of %3: %4.</source>
        <translation>%1 auf Stromkreis %2 von %3: %4.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2): %3; %4.</source>
        <translation>%1 (%2): %3; %4.</translation>
    </message>
    <message>
        <source>%1 at %2 (%3)</source>
        <translation>%1 bei %2 (%3)</translation>
    </message>
    <message>
        <source>%1 at %2 as codes count, %3 through the cable, %4 on average over the day.</source>
        <translation>%1 bei %2, wie Normen zählen, %3 durch das Kabel, %4 im Mittel über den Tag.</translation>
    </message>
    <message>
        <source>%1 at %2, %3 on average over the day.</source>
        <translation>%1 bei %2, %3 im Mittel über den Tag.</translation>
    </message>
    <message>
        <source>%1 to %2, %3 to %4.</source>
        <translation>%1 bis %2, %3 bis %4.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 at most, an element of %3 at %4; %5 reach the vessel, %6.</source>
        <translation>%1: höchstens %2, ein Heizelement von %3 bei %4; %5 kommen im Gefäß an, %6.</translation>
    </message>
    <message>
        <source>And %1 rules that fit: %2.</source>
        <translation>Und %1 Regeln, die eingehalten sind: %2.</translation>
    </message>
    <message>
        <source>And 1 rule that fits: %1.</source>
        <translation>Und 1 Regel, die eingehalten ist: %1.</translation>
    </message>
    <message>
        <source>First circuit: %1</source>
        <translation>Erster Stromkreis: %1</translation>
    </message>
    <message>
        <source>From mash to boil with it</source>
        <translation>Von der Maische zum Kochen damit</translation>
    </message>
    <message>
        <source>Largest element by each way of counting</source>
        <translation>Größtes Heizelement nach jeder Zählweise</translation>
    </message>
    <message>
        <source>On the first circuit, the second as planned:</source>
        <translation>Auf dem ersten Stromkreis, der zweite wie geplant:</translation>
    </message>
    <message>
        <source>Rules that are kept are named only; &quot;heatledger circuit --every-rule&quot; shows them with their arithmetic, clauses and all voltage ranges.</source>
        <translation>Eingehaltene Regeln sind nur genannt; &quot;heatledger circuit --every-rule&quot; zeigt sie mit Rechnung, Fundstelle und allen Spannungsbereichen.</translation>
    </message>
    <message>
        <source>Second circuit: %1</source>
        <translation>Zweiter Stromkreis: %1</translation>
    </message>
    <message>
        <source>The cable adds %1 to heating to the boil.</source>
        <translation>Das Kabel verlängert das Aufheizen zum Kochen um %1.</translation>
    </message>
    <message>
        <source>The rig&apos;s own power over its two circuits: %1.</source>
        <translation>Die eigene Leistung auf den beiden Stromkreisen: %1.</translation>
    </message>
    <message>
        <source>The rig&apos;s own power over two such circuits: %1.</source>
        <translation>Die eigene Leistung auf zwei solchen Stromkreisen: %1.</translation>
    </message>
    <message>
        <source>The whole day with it</source>
        <translation>Der ganze Tag damit</translation>
    </message>
    <message>
        <source>The whole day with one on each of two such circuits</source>
        <translation>Der ganze Tag mit je einem auf zwei solchen Stromkreisen</translation>
    </message>
    <message>
        <source>Two circuits: first: %1; second: %2.</source>
        <translation>Zwei Stromkreise: erster: %1; zweiter: %2.</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>What is the shortest day within the current?</source>
        <translation>Welcher ist der kürzeste Tag mit diesem Strom?</translation>
    </message>
    <message>
        <source>What the rig has stays within.</source>
        <translation>Was vorhanden ist, bleibt darin.</translation>
    </message>
    <message>
        <source>What would each way of counting allow, and how long is the day then?</source>
        <translation>Was ließe jede Zählweise zu, und wie lang ist der Tag dann?</translation>
    </message>
    <message>
        <source>added to heating to the boil by the cable</source>
        <translation>durch das Kabel länger bis zum Kochen</translation>
    </message>
    <message>
        <source>all codes together</source>
        <translation>alle Normen zusammen</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>Stromkreis</translation>
    </message>
    <message>
        <source>current in it, as codes count</source>
        <translation>Strom darin, wie Normen zählen</translation>
    </message>
    <message>
        <source>current in it, cable included</source>
        <translation>Strom darin, mit dem Kabel</translation>
    </message>
    <message>
        <source>current, as codes count</source>
        <translation>Strom, wie Normen zählen</translation>
    </message>
    <message>
        <source>current, cable included</source>
        <translation>Strom, mit dem Kabel</translation>
    </message>
    <message>
        <source>does not boil; the day takes %1</source>
        <translation>kocht nicht; der Tag dauert %1</translation>
    </message>
    <message>
        <source>element cold</source>
        <translation>Heizelement kalt</translation>
    </message>
    <message>
        <source>element enabled</source>
        <translation>Heizelement bereit</translation>
    </message>
    <message>
        <source>element hot</source>
        <translation>Heizelement heiß</translation>
    </message>
    <message>
        <source>lost in the cable</source>
        <translation>im Kabel verloren</translation>
    </message>
    <message>
        <source>mash to boil in %1; the day takes %2</source>
        <translation>von der Maische zum Kochen in %1; der Tag dauert %2</translation>
    </message>
    <message>
        <source>mean over the day</source>
        <translation>Mittel über den Tag</translation>
    </message>
    <message>
        <source>on the first</source>
        <translation>auf dem ersten</translation>
    </message>
    <message>
        <source>on the second</source>
        <translation>auf dem zweiten</translation>
    </message>
    <message>
        <source>one element of %1 at %2</source>
        <translation>ein Heizelement von %1 bei %2</translation>
    </message>
    <message>
        <source>reaches the vessel</source>
        <translation>kommt im Gefäß an</translation>
    </message>
    <message>
        <source>second circuit</source>
        <translation>zweiter Stromkreis</translation>
    </message>
    <message>
        <source>share of the day with current</source>
        <translation>Anteil des Tages mit Strom</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>two elements of %1 at %2 on its two circuits</source>
        <translation>zwei Heizelemente von %1 bei %2 auf den beiden Stromkreisen</translation>
    </message>
    <message>
        <source>two elements of %1 at %2 on two such circuits</source>
        <translation>zwei Heizelemente von %1 bei %2 auf zwei solchen Stromkreisen</translation>
    </message>
    <message>
        <source>two elements, %1 at %2 and %3 at %4, on its two circuits</source>
        <translation>zwei Heizelemente, %1 bei %2 und %3 bei %4, auf den beiden Stromkreisen</translation>
    </message>
    <message>
        <source>two elements, %1 at %2 and %3 at %4, on two such circuits</source>
        <translation>zwei Heizelemente, %1 bei %2 und %3 bei %4, auf zwei solchen Stromkreisen</translation>
    </message>
    <message>
        <source>voltage drop</source>
        <translation>Spannungsfall</translation>
    </message>
    <message>
        <source>· %1</source>
        <translation>· %1</translation>
    </message>
    <message>
        <source>· %1 [%2]</source>
        <translation>· %1 [%2]</translation>
    </message>
    <message>
        <source>by name plates alone</source>
        <translation>allein nach den Typenschildern</translation>
    </message>
    <message>
        <source>does not fit, more than it is rated for</source>
        <translation>passt nicht, mehr als seine Nennstromstärke</translation>
    </message>
    <message>
        <source>on the edge of its rating, and no rules to say more</source>
        <translation>an der Grenze seiner Nennstromstärke, und keine Regeln, die mehr sagten</translation>
    </message>
    <message>
        <source>within its rating, and no rules to say more</source>
        <translation>innerhalb seiner Nennstromstärke, und keine Regeln, die mehr sagten</translation>
    </message>
    <message>
        <source>By name plates alone, no clause claimed: %1</source>
        <translation>Allein nach den Typenschildern, ohne dass eine Klausel behauptet würde: %1</translation>
    </message>
    <message>
        <source>More than the %1 that the plan grants to long use.</source>
        <translation>Mehr als die %1, die der Plan auf Dauer zulässt.</translation>
    </message>
    <message>
        <source>More cannot be said: the plan names no region and no catalogue circuit, so no rules apply. Write &quot;region&quot; into the plan&apos;s &quot;place&quot;.</source>
        <translation>Mehr lässt sich nicht sagen: Der Plan nennt weder eine Region noch einen Stromkreis des Katalogs, es gelten also keine Regeln. Schreiben Sie &quot;region&quot; in den Abschnitt &quot;place&quot; des Plans.</translation>
    </message>
    <message>
        <source>Judged by name plates alone, for planning only: the plan names neither a region nor a circuit of the catalogue, so no rules apply.</source>
        <translation>Beurteilt allein nach den Typenschildern, nur zur Planung: Der Plan nennt weder eine Region noch einen Stromkreis des Katalogs, es gelten also keine Regeln.</translation>
    </message>
    <message>
        <source>fits only if %1</source>
        <translation>passt nur, wenn %1</translation>
    </message>
    <message>
        <source>%1, and only if %2</source>
        <translation>%1, und nur, wenn %2</translation>
    </message>
    <message>
        <source>Time since the start</source>
        <translation>Zeit seit dem Beginn</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>circuit %1</source>
        <translation>Stromkreis %1</translation>
    </message>
    <message>
        <source>The rinsing water is heated on another circuit, which is not judged here: that one must carry its heater and all else that hangs on it.</source>
        <translation>Das Nachgusswasser wird an einem anderen Stromkreis erhitzt, der hier nicht beurteilt wird: Der muss dessen Heizgerät und alles tragen, was sonst daran hängt.</translation>
    </message>
    <message>
        <source>The rinsing water is heated on this circuit while the element is in use, and its heater&apos;s power is not stated: its load is in no figure here and must be added.</source>
        <translation>Das Nachgusswasser wird an diesem Stromkreis erhitzt, während das Heizelement in Betrieb ist, und die Leistung dafür ist nicht angegeben: Seine Last steckt hier in keiner Zahl und muss dazugezählt werden.</translation>
    </message>
    <message>
        <source>The rinsing water&apos;s heater, %1, counts beside the element on this circuit, as other loads do: %2 more, and %3 of %4 while all of it is on.</source>
        <translation>Das Heizgerät für das Nachgusswasser, %1, zählt an diesem Stromkreis neben dem Heizelement, wie andere Lasten auch: %2 mehr, und %3 von %4, solange alles an ist.</translation>
    </message>
    <message>
        <source>%1 with %2, %3 of that for what else runs on it: %4.</source>
        <translation>%1 mit %2, davon %3 für anderes, was daran läuft: %4.</translation>
    </message>
    <message>
        <source>%1 on circuit %2 of %3, %4 of that for what else runs on it: %5.</source>
        <translation>%1 auf Stromkreis %2 von %3, davon %4 für anderes, was daran läuft: %5.</translation>
    </message>
</context>
<context>
    <name>Differences</name>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <translation>%1 %2 → %3</translation>
    </message>
</context>
<context>
    <name>Explained</name>
    <message>
        <source>Time is heat over power: from one temperature to the next t = ∫ C dT / (P − L), where C is what wort, grain and kettle take up per kelvin, P what the element gives and L all that is lost there.</source>
        <translation>Zeit ist Wärme durch Leistung: von einer Temperatur zur nächsten t = ∫ C dT / (P − L), wobei C ist, was Würze, Malz und Kessel je Kelvin aufnehmen, P, was das Heizelement gibt, und L alles, was dort verloren geht.</translation>
    </message>
    <message>
        <source>The balance of energy; water after IAPWS SR6-08, sugar after Bubnik et al. 1995, losses after Churchill &amp; Chu 1975 and Shah 2002</source>
        <translation>Die Energiebilanz; Wasser nach IAPWS SR6-08, Zucker nach Bubnik et al. 1995, Verluste nach Churchill &amp; Chu 1975 und Shah 2002</translation>
    </message>
    <message>
        <source>To a few percent where losses are small beside the element, worse where they are not. The supply alone may move the power by 20 %.</source>
        <translation>Auf wenige Prozent genau, wo die Verluste klein gegen das Heizelement sind, sonst schlechter. Allein das Netz kann die Leistung um 20 % verschieben.</translation>
    </message>
    <message>
        <source>Vapour is the element&apos;s power, less what side, base, lid, dry wall and surface lose otherwise, over the heat of evaporation; the mean of the boil, told of the cold volume when its clock starts.</source>
        <translation>Dampf ist die Leistung des Heizelements, weniger was Seite, Boden, Deckel, trockene Wand und Oberfläche sonst verlieren, durch die Verdampfungswärme; das Mittel des Kochens, bezogen auf das kalte Volumen zu seinem Beginn.</translation>
    </message>
    <message>
        <source>The balance of energy at the boil; heat of evaporation by Clapeyron from IAPWS SR1-86; below boiling Shah 2002</source>
        <translation>Die Energiebilanz beim Kochen; Verdampfungswärme nach Clapeyron aus IAPWS SR1-86; unter dem Siedepunkt Shah 2002</translation>
    </message>
    <message>
        <source>As sure as the net heat: where losses take 80 % of the power, an error of a fifth in them moves it by four fifths. Below boiling within 20 %.</source>
        <translation>So sicher wie die Nettowärme: Wo Verluste 80 % der Leistung nehmen, verschiebt ein Fehler von einem Fünftel darin sie um vier Fünftel. Unter dem Siedepunkt auf 20 % genau.</translation>
    </message>
    <message>
        <source>A word for the boil-off: a simmer below 5 %/h, gentle below 8, steady below 10, strong below 15, fierce above; on the edge where a fifth more or less of the law&apos;s evaporation decides whether it rolls.</source>
        <translation>Ein Wort für die Verdampfung: siedend unter 5 %/h, sanft unter 8, stetig unter 10, kräftig unter 15, darüber heftig; auf der Kippe, wo ein Fünftel mehr oder weniger Verdampfung des Gesetzes entscheidet, ob es wallt.</translation>
    </message>
    <message>
        <source>A scale of our own; 5 to 8 %/h is best practice in EU breweries (Joint Research Centre)</source>
        <translation>Eine eigene Skala; 5 bis 8 %/h sind gute Praxis in Brauereien der EU (Gemeinsame Forschungsstelle)</translation>
    </message>
    <message>
        <source>As the boil-off is.</source>
        <translation>Wie die Verdampfung.</translation>
    </message>
    <message>
        <source>The element&apos;s power less everything that is lost but evaporation, when the clock of the boil starts.</source>
        <translation>Die Leistung des Heizelements weniger alles, was außer durch Verdampfung verloren geht, zu Beginn des Kochens.</translation>
    </message>
    <message>
        <source>The balance of energy; films after Churchill &amp; Chu 1975, radiation after Stefan and Boltzmann</source>
        <translation>Die Energiebilanz; Wärmeübergang nach Churchill &amp; Chu 1975, Strahlung nach Stefan und Boltzmann</translation>
    </message>
    <message>
        <source>The convection at the side within 20 %; the emissivity of steel, from 0.16 to 0.7, adds more where it is guessed.</source>
        <translation>Die Konvektion an der Seite auf 20 % genau; der Emissionsgrad von Stahl, 0,16 bis 0,7, kommt dazu, wo er geraten ist.</translation>
    </message>
    <message>
        <source>Wort boils where its vapour has the pressure of the place, 101325 (1 − 2.25577e-5 h)^5.2559 Pa at h metres; a kettle too weak stays where what is given and what is lost meet.</source>
        <translation>Würze siedet, wo ihr Dampf den Druck des Ortes hat, 101325 (1 − 2,25577e-5 h)^5,2559 Pa in h Metern Höhe; ein zu schwacher Kessel bleibt, wo Zufuhr und Verlust sich treffen.</translation>
    </message>
    <message>
        <source>IAPWS SR1-86; ICAO; sugar after Starzak &amp; Peacock 1997</source>
        <translation>IAPWS SR1-86; ICAO; Zucker nach Starzak &amp; Peacock 1997</translation>
    </message>
    <message>
        <source>A day&apos;s weather moves it by 0.6 K.</source>
        <translation>Das Wetter eines Tages verschiebt es um 0,6 K.</translation>
    </message>
    <message>
        <source>What the element gave over its time, with what heated the cable and drove the pump. All of it is found again: supplied = stored + lifted out + lost + steam.</source>
        <translation>Was das Heizelement über seine Zeit gab, mit dem, was die Leitung wärmte und die Pumpe trieb. Alles findet sich wieder: zugeführt = gespeichert + herausgehoben + verloren + Dampf.</translation>
    </message>
    <message>
        <source>The balance of energy of each stage, path by path</source>
        <translation>Die Energiebilanz jeder Stufe, Weg für Weg</translation>
    </message>
    <message>
        <source>Each stage closes to a millionth; how heat divides among the paths is as sure as their laws: films and evaporation within 20 %, stored heat within 2 %.</source>
        <translation>Jede Stufe geht auf ein Millionstel auf; wie sich Wärme auf die Wege verteilt, ist so sicher wie deren Gesetze: Wärmeübergang und Verdampfung auf 20 %, gespeicherte Wärme auf 2 %.</translation>
    </message>
    <message>
        <source>Energy from the wall times the price of the hour in which it is drawn and of the month&apos;s use so far; a year is as many batches as the plan says.</source>
        <translation>Energie ab Steckdose mal dem Preis der Stunde, in der sie bezogen wird, und des bisherigen Verbrauchs im Monat; ein Jahr hat so viele Sude, wie der Plan sagt.</translation>
    </message>
    <message>
        <source>The plan&apos;s tariff</source>
        <translation>Der Tarif des Plans</translation>
    </message>
    <message>
        <source>As the energy is known; prices are as stated.</source>
        <translation>Wie die Energie; Preise wie angegeben.</translation>
    </message>
    <message>
        <source>What it costs over what it saves in a year of the plan&apos;s batches.</source>
        <translation>Was es kostet, durch das, was es in einem Jahr mit den Suden des Plans spart.</translation>
    </message>
    <message>
        <source>The plan&apos;s prices and the difference of two whole days</source>
        <translation>Die Preise des Plans und der Unterschied zweier ganzer Tage</translation>
    </message>
    <message>
        <source>As the difference of the two is known, most errors of which they share.</source>
        <translation>Wie der Unterschied der beiden; die meisten Fehler haben sie gemeinsam.</translation>
    </message>
    <message>
        <source>I = V / (R + r): R = V²/P of the element&apos;s name plate, r the copper of the cable, both ways. The kettle gets I²R, the cable I²r.</source>
        <translation>I = V / (R + r): R = V²/P vom Typenschild des Heizelements, r das Kupfer der Leitung, hin und zurück. Der Kessel bekommt I²R, die Leitung I²r.</translation>
    </message>
    <message>
        <source>Ohm; copper after IEC 60228, gauges after ASTM B258</source>
        <translation>Ohm; Kupfer nach IEC 60228, Drahtstärken nach ASTM B258</translation>
    </message>
    <message>
        <source>The nominal voltage is used: real supplies swing by up to 10 %, the power by 20 %. Name plates allow 5 % more and 10 % less.</source>
        <translation>Gerechnet wird mit der Nennspannung: Netze schwanken um bis zu 10 %, die Leistung um 20 %. Typenschilder erlauben 5 % mehr und 10 % weniger.</translation>
    </message>
    <message>
        <source>Each rule of the region compares the current, and how long it flows, with what circuit and cable may carry; the strictest decides.</source>
        <translation>Jede Regel der Region vergleicht den Strom, und wie lange er fließt, mit dem, was Stromkreis und Leitung tragen dürfen; die strengste entscheidet.</translation>
    </message>
    <message>
        <source>The rules that the page names, each with its clause and edition</source>
        <translation>Die Regeln, die die Seite nennt, jede mit Abschnitt und Ausgabe</translation>
    </message>
    <message>
        <source>For planning: where a judgement decides, the conditions are told. An electrician has the last word.</source>
        <translation>Zum Planen: Wo ein Ermessen entscheidet, stehen die Bedingungen dabei. Das letzte Wort hat eine Elektrofachkraft.</translation>
    </message>
    <message>
        <source>A controller switches the element fully on and off. Spans of the day with it on at 99 % and more count as unbroken; enabled is from its first to its last use without a long pause.</source>
        <translation>Ein Regler schaltet das Heizelement ganz ein und aus. Spannen des Tages, in denen es zu 99 % und mehr an ist, gelten als ununterbrochen; freigegeben ist es vom ersten bis zum letzten Gebrauch ohne lange Pause.</translation>
    </message>
    <message>
        <source>The day as it is simulated</source>
        <translation>Der Tag, wie er simuliert wird</translation>
    </message>
    <message>
        <source>As the times are known.</source>
        <translation>Wie die Zeiten.</translation>
    </message>
    <message>
        <source>Water, less what the grain keeps and what evaporates; the extract stays by mass, and gravity follows from its share. Volumes are those at 20 °C.</source>
        <translation>Wasser, weniger was das Malz behält und was verdampft; der Extrakt bleibt der Masse nach, und die Stammwürze folgt aus seinem Anteil. Volumen sind die bei 20 °C.</translation>
    </message>
    <message>
        <source>Density of sugar solutions after ICUMSA (Bubnik et al. 1995); gravity by the ASBC table&apos;s polynomial</source>
        <translation>Dichte von Zuckerlösungen nach ICUMSA (Bubnik et al. 1995); Stammwürze nach dem Polynom der ASBC-Tafel</translation>
    </message>
    <message>
        <source>Gravity within 0.01 °P of the formula; how much the grain gives and keeps is as stated.</source>
        <translation>Die Stammwürze auf 0,01 °P der Formel; was das Malz gibt und behält, ist wie angegeben.</translation>
    </message>
    <message>
        <source>The mash cools by what wall, base, lid and surface lose, over what it and the kettle hold per kelvin, from moment to moment.</source>
        <translation>Die Maische kühlt um das, was Wand, Boden, Deckel und Oberfläche verlieren, durch das, was sie und der Kessel je Kelvin halten, von Augenblick zu Augenblick.</translation>
    </message>
    <message>
        <source>The balance of energy; films after Churchill &amp; Chu 1975, evaporation after Shah 2002</source>
        <translation>Die Energiebilanz; Wärmeübergang nach Churchill &amp; Chu 1975, Verdampfung nach Shah 2002</translation>
    </message>
    <message>
        <source>Films and evaporation within 20 %: an excess over the room of 40 K after a night is known to some 4 K.</source>
        <translation>Wärmeübergang und Verdampfung auf 20 %: Ein Rest von 40 K über dem Raum nach einer Nacht ist auf etwa 4 K bekannt.</translation>
    </message>
    <message>
        <source>Days with ever better guesses are simulated until one just does what is asked. The least power that rolls is what is lost at boiling, evaporation included.</source>
        <translation>Tage mit immer besseren Annahmen werden simuliert, bis einer gerade leistet, was gefragt ist. Die kleinste Leistung, die wallt, ist der Verlust beim Sieden, mit der Verdampfung.</translation>
    </message>
    <message>
        <source>A bracketed search over the same simulation</source>
        <translation>Eine Suche mit Schranken über dieselbe Simulation</translation>
    </message>
    <message>
        <source>As the losses at boiling are: within 20 % of evaporation and convection.</source>
        <translation>Wie die Verluste beim Sieden: auf 20 % der Verdampfung und der Konvektion.</translation>
    </message>
    <message>
        <source>The same rig with the jacket and without it brews the same batch, each a whole day; what is told is the difference.</source>
        <translation>Dieselbe Anlage mit dem Mantel und ohne ihn braut denselben Sud, jeweils einen ganzen Tag; genannt ist der Unterschied.</translation>
    </message>
    <message>
        <source>The same simulation twice; layers after the textbook, Σ r₁ ln(rᵢ₊₁/rᵢ)/kᵢ around a kettle</source>
        <translation>Zweimal dieselbe Simulation; Schichten nach dem Lehrbuch, Σ r₁ ln(rᵢ₊₁/rᵢ)/kᵢ um einen Kessel</translation>
    </message>
    <message>
        <source>Better than either day alone, as most errors are common; insulation within 10 to 30 % of its published value.</source>
        <translation>Besser als jeder Tag allein, da die meisten Fehler gemeinsam sind; Dämmstoffe auf 10 bis 30 % ihres veröffentlichten Wertes.</translation>
    </message>
    <message>
        <source>The vapour of the day goes into a well-mixed room: airflow = vapour / (W indoors − W outdoors), W in kilograms of water per kilogram of dry air; what is beyond saturation condenses.</source>
        <translation>Der Dampf des Tages geht in einen gut gemischten Raum: Luftstrom = Dampf / (W innen − W außen), W in Kilogramm Wasser je Kilogramm trockener Luft; was über die Sättigung geht, kondensiert.</translation>
    </message>
    <message>
        <source>The balance of mass; moist air after ASHRAE Fundamentals 2017, ch. 1; window after ISO 6946</source>
        <translation>Die Massenbilanz; feuchte Luft nach ASHRAE Fundamentals 2017, Kap. 1; Fenster nach ISO 6946</translation>
    </message>
    <message>
        <source>Real rooms mix badly and walls take up moisture; a few percent beside that.</source>
        <translation>Wirkliche Räume mischen schlecht, und Wände nehmen Feuchte auf; sonst auf wenige Prozent.</translation>
    </message>
    <message>
        <source>Each change is tried as a whole plan of its own, simulated like any other; what is told is the difference to the rig as it is.</source>
        <translation>Jede Änderung wird als eigener ganzer Plan versucht und wie jeder andere simuliert; genannt ist der Unterschied zur Anlage, wie sie ist.</translation>
    </message>
    <message>
        <source>The same simulation, once for each way</source>
        <translation>Dieselbe Simulation, einmal für jeden Weg</translation>
    </message>
    <message>
        <source>Better than each day alone, as most errors are common.</source>
        <translation>Besser als jeder Tag allein, da die meisten Fehler gemeinsam sind.</translation>
    </message>
    <message>
        <source>%1 Source: %2. How sure: %3</source>
        <translation>%1 Quelle: %2. Wie sicher: %3</translation>
    </message>
    <message>
        <source>How this was computed</source>
        <translation>Wie das berechnet wurde</translation>
    </message>
    <message>
        <source>How often something doubles is its rate at each temperature, summed over the night: of the fastest food germ at each, and of lactic bacteria whose spores survive a mash.</source>
        <translation>Wie oft sich etwas verdoppelt, ist seine Rate bei jeder Temperatur, über die Nacht summiert: des jeweils schnellsten Lebensmittelkeims und von Milchsäurebakterien, deren Sporen eine Maische überleben.</translation>
    </message>
    <message>
        <source>A table of doubling times, Snyder 2001, with its limit of ten; the cardinal model, Rosso 1993, for Bacillus coagulans</source>
        <translation>Eine Tafel von Verdopplungszeiten, Snyder 2001, mit ihrer Grenze von zehn; das Kardinalmodell, Rosso 1993, für Bacillus coagulans</translation>
    </message>
    <message>
        <source>The worst case: nothing waits before it grows, as it does in cooling food. The rate of the spores has no printed unit and is taken for an hour&apos;s.</source>
        <translation>Der schlimmste Fall: Nichts wartet, bevor es wächst, wie es das in abkühlenden Lebensmitteln tut. Die Rate der Sporen hat keine gedruckte Einheit und wird als die einer Stunde genommen.</translation>
    </message>
    <message>
        <source>The day is computed 256 times, each time with other losses, surface, heat capacity, power and room, drawn evenly from what is believed of them; 1 day in 10 lies below the band and 1 in 10 above.</source>
        <translation>Der Tag wird 256-mal gerechnet, jedes Mal mit anderen Verlusten, anderer Oberfläche, Wärmekapazität, Leistung und anderem Raum, gleichmäßig aus dem gezogen, was man davon glaubt; 1 Tag von 10 liegt unter der Spanne und 1 von 10 darüber.</translation>
    </message>
    <message>
        <source>Even points after Sobol 1967; what is believed of each unknown stands with its source in the document on how sure it is</source>
        <translation>Gleichmäßige Punkte nach Sobol 1967; was von jeder Unbekannten geglaubt wird, steht mit seiner Quelle im Dokument darüber, wie sicher es ist</translation>
    </message>
    <message>
        <source>The ends are off by 5 or 6 % of a standard deviation for so many days; they are as good as what is believed.</source>
        <translation>Die Enden sind bei so vielen Tagen um 5 oder 6 % einer Standardabweichung falsch; sie sind so gut wie das, was geglaubt wird.</translation>
    </message>
    <message>
        <source>Wort and kettle cool by what the chiller&apos;s water takes and what wall, base, lid and surface lose, over what they hold per kelvin: t = ∫ C dT / (Q + L). A coil takes ε w c (T − Tw) with ε = 1 − exp(−UA / (w c)).</source>
        <translation>Würze und Kessel kühlen um das, was das Wasser des Kühlers nimmt und was Wand, Boden, Deckel und Oberfläche verlieren, geteilt durch das, was sie je Kelvin halten: t = ∫ C dT / (Q + L). Eine Spirale nimmt ε w c (T − Tw) mit ε = 1 − exp(−UA / (w c)).</translation>
    </message>
    <message>
        <source>Gnielinski 1976 within the tube; outside Churchill &amp; Bernstein 1977 at 0.15 m/s where it is stirred, Xin &amp; Ebadian where it is still; losses as those of the day</source>
        <translation>Im Rohr Gnielinski 1976; außen Churchill &amp; Bernstein 1977 bei 0,15 m/s, wo gerührt wird, Xin &amp; Ebadian, wo nicht; Verluste wie die des Tages</translation>
    </message>
    <message>
        <source>Stirred within some 20 %; still by a factor of two or three, as coefficients of 400 to 1300 W/(m²K) are printed for it; by air alone within 20 %.</source>
        <translation>Gerührt auf rund 20 %; ruhend um einen Faktor von zwei bis drei, da Koeffizienten von 400 bis 1300 W/(m²K) dafür gedruckt sind; an der Luft auf 20 %.</translation>
    </message>
    <message>
        <source>Heat over the rod&apos;s surface, π d l. In water the skin is as hot as natural convection needs, and no hotter than boiling needs: the cooler of the two.</source>
        <translation>Wärme über die Oberfläche des Stabs, π d l. In Wasser ist sie so heiß, wie freie Konvektion es braucht, und nicht heißer, als Sieden es braucht: das kühlere von beiden.</translation>
    </message>
    <message>
        <source>Churchill &amp; Chu 1975, horizontal cylinder; Gorenflo (VDI Heat Atlas) once it boils; first bubbles by Bergles &amp; Rohsenow 1964; a mash that does not move by a film of 300 W/(m²K), which is our own assumption</source>
        <translation>Churchill &amp; Chu 1975, waagrechter Zylinder; Gorenflo (VDI-Wärmeatlas), sobald es siedet; erste Blasen nach Bergles &amp; Rohsenow 1964; eine Maische, die sich nicht bewegt, mit einem Film von 300 W/(m²K), unserer eigenen Annahme</translation>
    </message>
    <message>
        <source>In water within some 10 K, in a mash a guess; where bubbles begin within 30 % of what the skin is above boiling, and later on smooth new rods. Scale on it is left out.</source>
        <translation>In Wasser auf etwa 10 K, in einer Maische eine Schätzung; wo Blasen beginnen auf 30 % dessen, was die Oberfläche über dem Siedepunkt liegt, und später an glatten neuen Stäben. Kalk darauf bleibt außen vor.</translation>
    </message>
    <message>
        <source>Hops: Malowicki &amp; Shellhammer 2005; SMM: 35 min to the half at 100 °C (Wilson &amp; Booer 1979), twice that 6 °C cooler (Fix 1999); DMS with the steam after Wilson &amp; Booer 1979</source>
        <translation>Hopfen: Malowicki &amp; Shellhammer 2005; SMM: 35 min bis zur Hälfte bei 100 °C (Wilson &amp; Booer 1979), doppelt so lang bei 6 °C weniger (Fix 1999); DMS mit dem Dampf nach Wilson &amp; Booer 1979</translation>
    </message>
    <message>
        <source>Made for comparing: measured at 90 to 130 °C and pH 5.2 for hops. Bitterness is a quarter to a half less than these rates alone give, by hops, filter, yeast and foam.</source>
        <translation>Zum Vergleichen gemacht: für Hopfen gemessen bei 90 bis 130 °C und pH 5,2. Die Bittere ist um ein Viertel bis die Hälfte geringer, als diese Raten allein ergeben, durch Hopfen, Filter, Hefe und Schaum.</translation>
    </message>
    <message>
        <source>Minutes at 100 °C = ∫ k(T) / k(100 °C) dt along the day&apos;s own temperature, k of the first order: one sum for hops, another for S-methyl methionine (SMM), which turns to DMS. DMS leaves by 63.5 times the share of the wort that evaporates.</source>
        <translation>Minuten bei 100 °C = ∫ k(T) / k(100 °C) dt entlang der Temperatur des Tages, k erster Ordnung: eine Summe für Hopfen, eine andere für S-Methylmethionin (SMM), das zu DMS wird. DMS geht um das 63,5-Fache des Anteils der Würze, der verdampft.</translation>
    </message>
    <message>
        <source>Starch dissolves by dS/dt = k(T) (a(T) − S), a what is accessible at T. Of it dextrin becomes fermentable as fast as alpha- and beta-amylase are left, which heat destroys: all of the first order, along the mash&apos;s own temperature, by two sets of constants.</source>
        <translation>Stärke löst sich nach dS/dt = k(T) (a(T) − S), a ist, was bei T zugänglich ist. Das Dextrin daraus wird so schnell vergärbar, wie alpha- und beta-Amylase übrig sind, die die Hitze zerstört: alles erster Ordnung, entlang der Temperatur dieser Maische, mit zwei Sätzen von Konstanten.</translation>
    </message>
    <message>
        <source>Brandam et al. 2003 (from memory); a set of the structure of Koljonen et al. 1995 (second hand); beta-amylase of a mash after Muller 1991; both fitted (own) to 82 % at 65 °C and 50 % at 75 °C</source>
        <translation>Brandam et al. 2003 (aus dem Gedächtnis); ein Satz vom Aufbau von Koljonen et al. 1995 (aus zweiter Hand); beta-Amylase einer Maische nach Muller 1991; beide angepasst (eigene Anpassung) an 82 % bei 65 °C und 50 % bei 75 °C</translation>
    </message>
    <message>
        <source>Time to full conversion to 30 %, attenuation to 4 points either way at best; what long hours at 45 to 60 °C add nobody has measured.</source>
        <translation>Die Zeit bis zur Verzuckerung auf 30 %, der Vergärungsgrad bestenfalls auf 4 Punkte nach oben und unten; was lange Stunden bei 45 bis 60 °C zufügen, hat niemand gemessen.</translation>
    </message>
    <message>
        <source>A balance of water, extract and heat: a share of the wort held by the grain, half of it if not stated, mixes with the rinsing water; the grain keeps as much as before, and the rest runs off.</source>
        <translation>Eine Bilanz von Wasser, Extrakt und Wärme: Ein Teil der Würze im Malz, ohne Angabe die Hälfte, mischt sich mit dem Nachgusswasser; das Malz behält so viel wie vorher, der Rest läuft ab.</translation>
    </message>
    <message>
        <source>Own: one ideal contact; no published measurement of grain rinsed in a bag or basket was found</source>
        <translation>Eigene Herleitung: ein idealer Kontakt; eine veröffentlichte Messung an Malz, das in Beutel oder Korb abgespült wird, fand sich nicht</translation>
    </message>
    <message>
        <source>Between none and all of the held wort mixed; water that trickles slowly and evenly may get more than that.</source>
        <translation>Zwischen keiner und vollständiger Mischung mit der gehaltenen Würze; Wasser, das langsam und gleichmäßig durchsickert, kann mehr herausholen.</translation>
    </message>
</context>
<context>
    <name>Followed</name>
    <message>
        <source>The day is over</source>
        <translation>Der Tag ist zu Ende</translation>
    </message>
    <message>
        <source>Heat the water</source>
        <translation>Wasser erhitzen</translation>
    </message>
    <message>
        <source>Grain in</source>
        <translation>Malz hinein</translation>
    </message>
    <message>
        <source>Heat the mash</source>
        <translation>Maische erhitzen</translation>
    </message>
    <message>
        <source>Hold the mash</source>
        <translation>Maische halten</translation>
    </message>
    <message>
        <source>Unplug</source>
        <translation>Stecker ziehen</translation>
    </message>
    <message>
        <source>Heat to the boil</source>
        <translation>Zum Kochen erhitzen</translation>
    </message>
    <message>
        <source>It rolls</source>
        <translation>Es wallt</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>plugged in</source>
        <translation>eingeschaltet</translation>
    </message>
    <message>
        <source>grain in</source>
        <translation>eingemaischt</translation>
    </message>
    <message>
        <source>unplugged</source>
        <translation>ausgesteckt</translation>
    </message>
    <message>
        <source>heating</source>
        <translation>heizen</translation>
    </message>
    <message>
        <source>boil</source>
        <translation>kocht</translation>
    </message>
    <message>
        <source>lid on</source>
        <translation>Deckel zu</translation>
    </message>
    <message>
        <source>lid off</source>
        <translation>Deckel auf</translation>
    </message>
    <message>
        <source>Written last, at %1: %2.</source>
        <translation>Zuletzt notiert, um %1: %2.</translation>
    </message>
    <message>
        <source>Written last, at %1: %2, as planned.</source>
        <translation>Zuletzt notiert, um %1: %2, wie geplant.</translation>
    </message>
    <message>
        <source>Written last, at %1: %2; planned was %3.</source>
        <translation>Zuletzt notiert, um %1: %2; geplant war %3.</translation>
    </message>
    <message>
        <source>Written last, at %1: %2, sooner than expected, %3 to %4.</source>
        <translation>Zuletzt notiert, um %1: %2, früher als erwartet (%3 bis %4).</translation>
    </message>
    <message>
        <source>Written last, at %1: %2, later than expected, %3 to %4.</source>
        <translation>Zuletzt notiert, um %1: %2, später als erwartet (%3 bis %4).</translation>
    </message>
    <message>
        <source>Written last, at %1: %2, as expected, %3 to %4.</source>
        <translation>Zuletzt notiert, um %1: %2, wie erwartet (%3 bis %4).</translation>
    </message>
    <message>
        <source>Nothing was read yet: what follows is the plan, by its own clock.</source>
        <translation>Noch nichts abgelesen: Was folgt, ist der Plan nach seiner eigenen Uhr.</translation>
    </message>
    <message>
        <source>Read last, at %1: %2.</source>
        <translation>Zuletzt abgelesen, um %1: %2.</translation>
    </message>
    <message>
        <source>Read last, at %1: %2, far outside what was expected, %3 to %4.</source>
        <translation>Zuletzt abgelesen, um %1: %2, weit außerhalb des Erwarteten (%3 bis %4).</translation>
    </message>
    <message>
        <source>Read last, at %1: %2, a bit outside what was expected, %3 to %4.</source>
        <translation>Zuletzt abgelesen, um %1: %2, etwas außerhalb des Erwarteten (%3 bis %4).</translation>
    </message>
    <message>
        <source>Read last, at %1: %2, as expected, %3 to %4.</source>
        <translation>Zuletzt abgelesen, um %1: %2, wie erwartet (%3 bis %4).</translation>
    </message>
    <message>
        <source>Now the wort has about %1 (8 in 10: %2 to %3).</source>
        <translation>Jetzt hat die Würze etwa %1 (8 von 10: %2 bis %3).</translation>
    </message>
    <message>
        <source>Between %1 and %2: %3.</source>
        <translation>Zwischen %1 und %2: %3.</translation>
    </message>
    <message>
        <source>Between %1 and %2 (8 of 10 such days): %3.</source>
        <translation>Zwischen %1 und %2 (8 von 10 solchen Tagen): %3.</translation>
    </message>
    <message>
        <source>At %1: %2.</source>
        <translation>Um %1: %2.</translation>
    </message>
    <message>
        <source>From %1 on, and on more than 1 in 10 such days never: %2.</source>
        <translation>Ab %1, und an mehr als 1 von 10 solchen Tagen nie: %2.</translation>
    </message>
    <message>
        <source>The mash then has about %1 (8 in 10: %2 to %3).</source>
        <translation>Die Maische hat dann etwa %1 (8 von 10: %2 bis %3).</translation>
    </message>
    <message>
        <source>By now, and not written yet: %1. Type &quot;%2&quot; when it happens; what follows waits for it.</source>
        <translation>Inzwischen fällig und noch nicht notiert: %1. Tippen Sie „%2“, wenn es so weit ist; was folgt, wartet darauf.</translation>
    </message>
    <message>
        <source>What comes</source>
        <translation>Was kommt</translation>
    </message>
    <message>
        <source>Nothing more: by the clock the day is over.</source>
        <translation>Nichts mehr: Nach der Uhr ist der Tag zu Ende.</translation>
    </message>
    <message>
        <source>What was read leaves too little for ranges: these are the times of the likeliest day, and nobody can say how sure.</source>
        <translation>Das Abgelesene lässt zu wenig für Spannen übrig: Das sind die Zeiten des wahrscheinlichsten Tages, und niemand kann sagen, wie sicher.</translation>
    </message>
    <message>
        <source>Heed now</source>
        <translation>Jetzt zu beachten</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>At about %1: %2.</source>
        <translation>Um etwa %1: %2.</translation>
    </message>
    <message>
        <source>What goes into the boil is not in this list: the sheet to brew by has it, with what it does.</source>
        <translation>Was ins Kochen hineinkommt, steht nicht in dieser Liste: Das Blatt zum Brauen hat es, mit dem, was es bewirkt.</translation>
    </message>
    <message>
        <source>Lift the grain, let it drain</source>
        <translation>Malz herausheben, abtropfen lassen</translation>
    </message>
</context>
<context>
    <name>Goal</name>
    <message>
        <source>to strike within %1</source>
        <translation>in %1 einzumaischen</translation>
    </message>
    <message>
        <source>to come from mash to boil within %1</source>
        <translation>von der Maische in %1 zum Kochen zu kommen</translation>
    </message>
    <message>
        <source>to be at the boil within %1</source>
        <translation>in %1 zum Kochen zu kommen</translation>
    </message>
    <message>
        <source>to boil off %1</source>
        <translation>%1 zu verdampfen</translation>
    </message>
    <message>
        <source>%1 (the limit: %2)</source>
        <translation>%1 (die Grenze: %2)</translation>
    </message>
    <message>
        <source>%1 (that takes %2)</source>
        <translation>%1 (das braucht %2)</translation>
    </message>
    <message>
        <source>to roll in the boil</source>
        <translation>beim Kochen zu wallen</translation>
    </message>
</context>
<context>
    <name>Helps</name>
    <message>
        <source>This plan leaves no mash unplugged, so that no morning can be warmer.</source>
        <translation>Dieser Plan lässt keine Maische ohne Strom stehen; so kann kein Morgen wärmer werden.</translation>
    </message>
    <message>
        <source>The circuit of %1 is not in the way: %2.</source>
        <translation>Der Stromkreis von %1 steht nicht im Weg: %2.</translation>
    </message>
    <message>
        <source>%1 rolls as it is, with %2 of the heat that it takes.</source>
        <translation>%1 wallt schon, mit %2 der nötigen Wärme.</translation>
    </message>
    <message>
        <source>Nothing that was tried helps %1 %2.</source>
        <translation>Nichts, was versucht wurde, hilft %1 %2.</translation>
    </message>
    <message>
        <source>No single change helps %1 %2.</source>
        <translation>Keine einzelne Änderung hilft %1 %2.</translation>
    </message>
    <message>
        <source>The few that bring most of it together: %1 (%2).</source>
        <translation>Die wenigen, die zusammen das meiste davon bringen: %1 (%2).</translation>
    </message>
    <message>
        <source>Without touching element or circuit: %1 (%2).</source>
        <translation>Ohne Heizelement oder Stromkreis anzurühren: %1 (%2).</translation>
    </message>
    <message>
        <source>All goals of the plan are met as it is.</source>
        <translation>Alle Ziele des Plans sind schon erfüllt.</translation>
    </message>
    <message>
        <source>The fewest changes that meet all goals of the plan: %1.</source>
        <translation>Die wenigsten Änderungen, die alle Ziele des Plans erfüllen: %1.</translation>
    </message>
    <message>
        <source>Up to %1 changes at once do not meet all goals of the plan.</source>
        <translation>Bis zu %1 Änderungen zugleich erfüllen nicht alle Ziele des Plans.</translation>
    </message>
    <message>
        <source>With these it boils off %1, less than the %2 that the plan wants.</source>
        <translation>Damit verdampfen beim Kochen %1, weniger als die %2, die der Plan will.</translation>
    </message>
    <message>
        <source>This is a part: %1 of %2 ways were tried before it was stopped.</source>
        <translation>Dies ist ein Teil: %1 von %2 Möglichkeiten wurden versucht, bevor abgebrochen wurde.</translation>
    </message>
    <message>
        <source>By the rules its circuit does not fit as it is; what leaves element and circuit alone leaves that so.</source>
        <translation>Nach den Regeln passt ihr Stromkreis so nicht; was Heizelement und Stromkreis lässt, wie sie sind, ändert daran nichts.</translation>
    </message>
    <message>
        <source>Each change is tried as a whole simulated day. Of at most %1 changes at once there are %2 ways, at most one change a lever, and %3 of any number; what does nothing by itself is left out.</source>
        <translation>Jede Änderung wird als ganzer simulierter Tag versucht. Für höchstens %1 Änderungen zugleich gibt es %2 Möglichkeiten, höchstens eine Änderung je Stellschraube, und %3 für beliebig viele; was allein nichts bewirkt, bleibt weg.</translation>
    </message>
    <message>
        <source>The goals: to roll for sure, to strike and from mash to boil within %1 each, to boil off %2, on a circuit that no rule refuses.</source>
        <translation>Die Ziele: sicher wallen, zum Einmaischen und von der Maische zum Kochen in je %1, %2 verdampfen, an einem Stromkreis, den keine Regel ablehnt.</translation>
    </message>
    <message>
        <source>Warm water is counted with the heat that it brings, at the price of current; money of a year is for as much wort as today, so that a small batch is brewed more often.</source>
        <translation>Warmes Wasser zählt mit der Wärme, die es mitbringt, zum Preis des Stroms; das Geld eines Jahres gilt für so viel Würze wie heute, ein kleiner Sud wird also öfter gebraut.</translation>
    </message>
    <message>
        <source>Elements are in steps as they are commonly sold, from memory; another circuit&apos;s cable is taken as long as today&apos;s and thicker as its current is larger. Where no price is stated, none is supposed.</source>
        <translation>Heizelemente stehen in Stufen, wie sie üblich zu kaufen sind, aus dem Gedächtnis; das Kabel eines anderen Stromkreises gilt als so lang wie das heutige und im Verhältnis seines Stroms dicker. Wo kein Preis genannt ist, wird keiner angenommen.</translation>
    </message>
    <message>
        <source>As it is the day does not come to a rolling end, so that nothing is sooner or cheaper than it: first it has to roll.</source>
        <translation>So wie es ist, kommt der Tag zu keinem wallenden Ende; nichts ist also früher oder billiger: Zuerst muss es wallen.</translation>
    </message>
    <message>
        <source>to roll in the boil</source>
        <translation>wallend zu kochen</translation>
    </message>
    <message>
        <source>to be ready sooner</source>
        <translation>früher fertig zu sein</translation>
    </message>
    <message>
        <source>to be warmer in the morning</source>
        <translation>am Morgen wärmer zu sein</translation>
    </message>
    <message>
        <source>to cost less</source>
        <translation>weniger zu kosten</translation>
    </message>
    <message>
        <source>to fit its circuit</source>
        <translation>zu ihrem Stromkreis zu passen</translation>
    </message>
    <message>
        <source>%1 sooner</source>
        <translation>%1 früher</translation>
    </message>
    <message>
        <source>%1 warmer, %2</source>
        <translation>%1 wärmer, %2</translation>
    </message>
    <message>
        <source>%1 less for as much wort</source>
        <translation>%1 weniger für ebenso viel Würze</translation>
    </message>
    <message>
        <source>%1 less a year</source>
        <translation>%1 weniger im Jahr</translation>
    </message>
    <message>
        <source>nothing to buy</source>
        <translation>nichts zu kaufen</translation>
    </message>
    <message>
        <source>Warmer in the morning, %1</source>
        <translation>Wärmer am Morgen, %1</translation>
    </message>
    <message>
        <source>Less a year, %1</source>
        <translation>Weniger im Jahr, %1</translation>
    </message>
    <message>
        <source>Less for as much wort, %1</source>
        <translation>Weniger für ebenso viel Würze, %1</translation>
    </message>
    <message>
        <source>Less of the circuit&apos;s rating, %</source>
        <translation>Weniger vom Nennstrom des Stromkreises, %</translation>
    </message>
    <message>
        <source>What helps %1 %2</source>
        <translation>Was %1 hilft, %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>nothing changed</source>
        <translation>nichts geändert</translation>
    </message>
    <message>
        <source>One change, %1</source>
        <translation>Eine Änderung, %1</translation>
    </message>
    <message>
        <source>The few that bring most of it together</source>
        <translation>Die wenigen, die zusammen das meiste davon bringen</translation>
    </message>
    <message>
        <source>The fewest that meet all goals</source>
        <translation>Die wenigsten, die alle Ziele erfüllen</translation>
    </message>
    <message>
        <source>Ways between wishes, none better in everything than another</source>
        <translation>Wege zwischen den Wünschen, keiner in allem besser als ein anderer</translation>
    </message>
    <message>
        <source>heat, %</source>
        <translation>Wärme, %</translation>
    </message>
    <message>
        <source>day, min</source>
        <translation>Tag, min</translation>
    </message>
    <message>
        <source>boils off, %/h</source>
        <translation>dampft ab, %/h</translation>
    </message>
    <message>
        <source>morning, %1</source>
        <translation>morgens, %1</translation>
    </message>
    <message>
        <source>kWh a batch</source>
        <translation>kWh je Sud</translation>
    </message>
    <message>
        <source>%1 saved a year</source>
        <translation>%1 im Jahr gespart</translation>
    </message>
    <message>
        <source>price, %1</source>
        <translation>Preis, %1</translation>
    </message>
    <message>
        <source>paid back, years</source>
        <translation>bezahlt, Jahre</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>the rules do not grant it to this circuit</source>
        <translation>die Regeln gestatten es diesem Stromkreis nicht</translation>
    </message>
    <message>
        <source>not allowed %1</source>
        <translation>nicht erlaubt %1</translation>
    </message>
    <message>
        <source>overflows</source>
        <translation>läuft über</translation>
    </message>
    <message>
        <source>More of the heat that rolling takes, %, until it is sure</source>
        <translation>Mehr von der Wärme, die Wallen braucht, %, bis es sicher ist</translation>
    </message>
    <message>
        <source>Ready sooner</source>
        <translation>Früher fertig</translation>
    </message>
    <message>
        <source>%1 with %2: no other single change helps %3 more %4.</source>
        <translation>%1 (%2): Keine andere einzelne Änderung hilft %3 mehr, %4.</translation>
    </message>
    <message>
        <source>%1 of the heat that rolling takes</source>
        <translation>%1 der Wärme, die Wallen braucht</translation>
    </message>
    <message>
        <source>%1 of the heat that rolling takes, still on the edge</source>
        <translation>%1 der Wärme, die Wallen braucht, noch auf der Kippe</translation>
    </message>
    <message>
        <source>%1 of the circuit&apos;s rating (%2)</source>
        <translation>%1 vom Nennstrom des Stromkreises (%2)</translation>
    </message>
    <message>
        <source>The heat is what the vessel gets of the least that rolls; from %1 on it rolls whatever the law&apos;s scatter, more counts for nothing here, and of what brings as much the smaller change comes first. What brings nothing of this wish is left out of the table here; spreadsheets have every change.</source>
        <translation>Die Wärme ist, was das Gefäß vom Mindesten bekommt, das wallen lässt; ab %1 wallt es, wie auch immer das Gesetz streut, mehr zählt hier nichts, und von gleich Gutem steht die kleinere Änderung voran. Was zu diesem Wunsch nichts bringt, fehlt hier in der Tabelle; Tabellendateien haben jede Änderung.</translation>
    </message>
    <message>
        <source>Not allowed</source>
        <translation>Nicht erlaubt</translation>
    </message>
</context>
<context>
    <name>Kept</name>
    <message>
        <source>these readings are in the plan already, and count once</source>
        <translation>diese Messwerte stehen schon im Plan und zählen einmal</translation>
    </message>
    <message>
        <source>the readings tell nothing of this kettle that could be kept</source>
        <translation>die Messwerte sagen über diesen Kessel nichts, was sich behalten ließe</translation>
    </message>
    <message>
        <source>the readings do not go together; leave out those that are wrong first</source>
        <translation>die Messwerte passen nicht zueinander; lassen Sie zuerst die falschen weg</translation>
    </message>
    <message>
        <source>the readings would fit far better in the other unit; say which with --read-in</source>
        <translation>die Messwerte passten weit besser in der anderen Einheit; sagen Sie mit --read-in, in welcher</translation>
    </message>
    <message>
        <source>the readings would fit far better twelve hours earlier or later; mend their clock first</source>
        <translation>die Messwerte passten weit besser zwölf Stunden früher oder später; berichtigen Sie zuerst ihre Uhr</translation>
    </message>
    <message>
        <source>these readings are in the factors of %1 already; held against them here they count twice</source>
        <translation>diese Ablesungen stecken schon in den Faktoren von %1; hier daran gehalten zählen sie doppelt</translation>
    </message>
</context>
<context>
    <name>Learned</name>
    <message>
        <source>With your readings: in the morning about %1; 8 of 10 such nights end between %2 and %3, 1 below and 1 above.</source>
        <translation>Mit Ihren Ablesungen: am Morgen etwa %1; 8 von 10 solchen Nächten enden zwischen %2 und %3, eine darunter und eine darüber.</translation>
    </message>
    <message>
        <source>Before any reading: in the morning about %1; 8 of 10 such nights end between %2 and %3, 1 below and 1 above.</source>
        <translation>Vor jeder Ablesung: am Morgen etwa %1; 8 von 10 solchen Nächten enden zwischen %2 und %3, eine darunter und eine darüber.</translation>
    </message>
    <message>
        <source>With your readings: on such a day it rolls at about %1; 8 of 10 such days between %2 and %3.</source>
        <translation>Mit Ihren Ablesungen: an einem solchen Tag wallt es etwa um %1; an 8 von 10 solchen Tagen zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>Before any reading: it rolls at about %1; 8 of 10 such days between %2 and %3.</source>
        <translation>Vor jeder Ablesung: es wallt etwa um %1; an 8 von 10 solchen Tagen zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>The thermometer reads about %1 too high (8 in 10: %2 less to %3 more than that).</source>
        <translation>Das Thermometer zeigt etwa %1 zu viel (8 von 10: %2 weniger bis %3 mehr als das).</translation>
    </message>
    <message>
        <source>The thermometer reads about %1 too low (8 in 10: %2 more to %3 less than that).</source>
        <translation>Das Thermometer zeigt etwa %1 zu wenig (8 von 10: %2 mehr bis %3 weniger als das).</translation>
    </message>
    <message>
        <source>It loses about %1 more than planned (8 in 10: %2 to %3 more).</source>
        <translation>Er verliert etwa %1 mehr als geplant (8 von 10: %2 bis %3 mehr).</translation>
    </message>
    <message>
        <source>It loses about %1 less than planned (8 in 10: %2 to %3 less).</source>
        <translation>Er verliert etwa %1 weniger als geplant (8 von 10: %2 bis %3 weniger).</translation>
    </message>
    <message>
        <source>It loses about as planned (8 in 10: %1 less to %2 more).</source>
        <translation>Er verliert etwa so viel wie geplant (8 von 10: %1 weniger bis %2 mehr).</translation>
    </message>
    <message>
        <source>Its open surface evaporates about %1 more than planned (8 in 10: %2 to %3 more).</source>
        <translation>Seine offene Oberfläche verdunstet etwa %1 mehr als geplant (8 von 10: %2 bis %3 mehr).</translation>
    </message>
    <message>
        <source>Its open surface evaporates about %1 less than planned (8 in 10: %2 to %3 less).</source>
        <translation>Seine offene Oberfläche verdunstet etwa %1 weniger als geplant (8 von 10: %2 bis %3 weniger).</translation>
    </message>
    <message>
        <source>Its open surface evaporates about as planned (8 in 10: %1 less to %2 more).</source>
        <translation>Seine offene Oberfläche verdunstet etwa so viel wie geplant (8 von 10: %1 weniger bis %2 mehr).</translation>
    </message>
    <message>
        <source>There is about %1 more in it than planned (8 in 10: %2 to %3 more).</source>
        <translation>Es ist etwa %1 mehr darin als geplant (8 von 10: %2 bis %3 mehr).</translation>
    </message>
    <message>
        <source>There is about %1 less in it than planned (8 in 10: %2 to %3 less).</source>
        <translation>Es ist etwa %1 weniger darin als geplant (8 von 10: %2 bis %3 weniger).</translation>
    </message>
    <message>
        <source>There is about as much in it as planned (8 in 10: %1 less to %2 more).</source>
        <translation>Es ist etwa so viel darin wie geplant (8 von 10: %1 weniger bis %2 mehr).</translation>
    </message>
    <message>
        <source>The wort gets about %1 more power than planned (8 in 10: %2 to %3 more).</source>
        <translation>Die Würze bekommt etwa %1 mehr Leistung als geplant (8 von 10: %2 bis %3 mehr).</translation>
    </message>
    <message>
        <source>The wort gets about %1 less power than planned (8 in 10: %2 to %3 less).</source>
        <translation>Die Würze bekommt etwa %1 weniger Leistung als geplant (8 von 10: %2 bis %3 weniger).</translation>
    </message>
    <message>
        <source>The wort gets about the power that was planned (8 in 10: %1 less to %2 more).</source>
        <translation>Die Würze bekommt etwa die geplante Leistung (8 von 10: %1 weniger bis %2 mehr).</translation>
    </message>
    <message>
        <source>What your readings say of this kettle</source>
        <translation>Was Ihre Ablesungen über diesen Kessel sagen</translation>
    </message>
    <message>
        <source>They tell nothing new of it.</source>
        <translation>Sie sagen nichts Neues über ihn.</translation>
    </message>
    <message>
        <source>Not told by these readings: %1.</source>
        <translation>Nicht aus diesen Ablesungen zu erfahren: %1.</translation>
    </message>
    <message>
        <source>Losses and volume cannot be told apart by cooling alone: what is known is the loss per litre. The exact litres would settle it.</source>
        <translation>Verluste und Volumen lassen sich durch Abkühlen allein nicht trennen: bekannt ist der Verlust je Liter. Die genauen Liter würden es klären.</translation>
    </message>
    <message>
        <source>Power and volume cannot be told apart by temperatures alone: what is known is the power per litre. A meter reading, or the exact litres, would settle it.</source>
        <translation>Leistung und Volumen lassen sich durch Temperaturen allein nicht trennen: bekannt ist die Leistung je Liter. Ein Zählerstand oder die genauen Liter würden es klären.</translation>
    </message>
    <message>
        <source>That is far from what was planned. Before believing it, check the volume, the lid, the room&apos;s temperature, the thermometer, and the clock past midnight.</source>
        <translation>Das ist weit von der Planung entfernt. Prüfen Sie, bevor Sie es glauben, das Volumen, den Deckel, die Raumtemperatur, das Thermometer und die Uhr nach Mitternacht.</translation>
    </message>
    <message>
        <source>The reading at %1 does not fit the others. It counts nearly nothing; please check it.</source>
        <translation>Die Ablesung um %1 passt nicht zu den anderen. Sie zählt fast nichts; bitte prüfen Sie sie.</translation>
    </message>
    <message>
        <source>%1 at %2 does not fit the others, by %3. It counts nearly nothing; please check it.</source>
        <translation>%1 um %2 passt nicht zu den anderen, um %3. Das zählt fast nichts; bitte prüfen Sie es.</translation>
    </message>
    <message>
        <source>%1 at %2 is a bit outside what was expected, about %3.</source>
        <translation>%1 um %2 liegt etwas außerhalb des Erwarteten, etwa %3.</translation>
    </message>
    <message>
        <source>%1 at %2 is far outside what was expected, about %3.</source>
        <translation>%1 um %2 liegt weit außerhalb des Erwarteten, etwa %3.</translation>
    </message>
    <message>
        <source>Your readings allow two stories, and which of them are wrong cannot be told: the range is wide for that. Please check those below that do not fit.</source>
        <translation>Ihre Ablesungen lassen zwei Geschichten zu, und welche davon falsch sind, lässt sich nicht sagen: deshalb ist der Bereich breit. Bitte prüfen Sie die unten, die nicht passen.</translation>
    </message>
    <message>
        <source>All of them would fit far better in the other unit, °F for °C or the reverse: is that what was read?</source>
        <translation>Alle würden in der anderen Einheit weit besser passen, °F statt °C oder umgekehrt: wurde so abgelesen?</translation>
    </message>
    <message>
        <source>All of them would fit far better twelve hours earlier or later: is the clock right, morning for evening?</source>
        <translation>Alle würden zwölf Stunden früher oder später weit besser passen: stimmt die Uhr, morgens statt abends?</translation>
    </message>
    <message>
        <source>Do they go together?</source>
        <translation>Passen sie zusammen?</translation>
    </message>
    <message>
        <source>Which reading next?</source>
        <translation>Welche Ablesung als nächste?</translation>
    </message>
    <message>
        <source>None that a thermometer could still give would narrow it much from ± %1.</source>
        <translation>Keine, die ein Thermometer noch geben könnte, würde ± %1 viel enger machen.</translation>
    </message>
    <message>
        <source>One more look at %1 would narrow the morning from ± %2 to ± %3 (8 in 10 nights).</source>
        <translation>Noch ein Blick um %1 würde den Morgen von ± %2 auf ± %3 eingrenzen (8 von 10 Nächten).</translation>
    </message>
    <message>
        <source>One more look at %1 would narrow the time of the boil from ± %2 to ± %3 (8 in 10 days).</source>
        <translation>Noch ein Blick um %1 würde den Zeitpunkt des Kochens von ± %2 auf ± %3 eingrenzen (8 von 10 Tagen).</translation>
    </message>
    <message>
        <source>The best, at %1, would leave ± %2.</source>
        <translation>Die beste, um %1, ließe ± %2.</translation>
    </message>
    <message>
        <source>None of these readings falls into the plan&apos;s day, so they say nothing of it: does the day begin when the plan says, and is every moment an event?</source>
        <translation>Keine dieser Ablesungen fällt in den geplanten Tag, sie sagen also nichts über ihn: beginnt der Tag, wann der Plan es sagt, und ist jeder Zeitpunkt ein Ereignis?</translation>
    </message>
    <message>
        <source>The plan&apos;s day stops before it comes to these readings, so they say nothing of it.</source>
        <translation>Der geplante Tag endet, bevor er zu diesen Ablesungen kommt; sie sagen also nichts über ihn.</translation>
    </message>
    <message>
        <source>The readings are so unlike the plan that no range can be told: please check volume, power, lid, units and the clock.</source>
        <translation>Die Ablesungen sind dem Plan so unähnlich, dass sich kein Bereich angeben lässt: bitte prüfen Sie Volumen, Leistung, Deckel, Einheiten und Uhr.</translation>
    </message>
    <message>
        <source>Does it match what I measured?</source>
        <translation>Stimmt es mit meinen Messungen überein?</translation>
    </message>
    <message>
        <source>The lines were read so: %1.</source>
        <translation>Die Zeilen wurden so gelesen: %1.</translation>
    </message>
    <message>
        <source>A fit multiplies the plan&apos;s own losses, evaporation, amount and power, and shifts the thermometer; the laws stay as they are. It cannot tell side, lid and base apart, nor a jacket&apos;s conductivity, and it never takes a room from a cooling curve.</source>
        <translation>Eine Anpassung vervielfacht Verluste, Verdunstung, Menge und Leistung des Plans und verschiebt das Thermometer; die Gesetze bleiben, wie sie sind. Seite, Deckel und Boden kann sie nicht trennen, auch nicht die Leitfähigkeit eines Mantels, und nie nimmt sie einen Raum aus einer Abkühlkurve.</translation>
    </message>
    <message>
        <source>The readings leave too little of what was drawn for ranges of the day; those of the kettle are by straight lines.</source>
        <translation>Die Ablesungen lassen von dem Gezogenen zu wenig übrig für Bereiche des Tages; die des Kessels sind geradlinig genähert.</translation>
    </message>
    <message>
        <source>the thermometer</source>
        <translation>das Thermometer</translation>
    </message>
    <message>
        <source>the closed kettle&apos;s losses</source>
        <translation>die Verluste des geschlossenen Kessels</translation>
    </message>
    <message>
        <source>the open surface</source>
        <translation>die offene Oberfläche</translation>
    </message>
    <message>
        <source>the amount in it</source>
        <translation>die Menge darin</translation>
    </message>
    <message>
        <source>the power</source>
        <translation>die Leistung</translation>
    </message>
    <message>
        <source>the room</source>
        <translation>der Raum</translation>
    </message>
    <message>
        <source>the water as drawn</source>
        <translation>das Wasser aus der Leitung</translation>
    </message>
    <message>
        <source>the lid&apos;s gap</source>
        <translation>der Spalt des Deckels</translation>
    </message>
    <message>
        <source>what stays in the grain</source>
        <translation>was im Malz bleibt</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Times the plan&apos;s own</source>
        <translation>Mal dem Wert des Plans</translation>
    </message>
    <message>
        <source>Added to the plan&apos;s own</source>
        <translation>Zum Wert des Plans dazu</translation>
    </message>
    <message>
        <source>read</source>
        <translation>abgelesen</translation>
    </message>
    <message>
        <source>expected before it</source>
        <translation>davor erwartet</translation>
    </message>
    <message>
        <source>as learned</source>
        <translation>wie gelernt</translation>
    </message>
    <message>
        <source>off, in its own spread</source>
        <translation>Abweichung, in eigener Streuung</translation>
    </message>
    <message>
        <source>before: low</source>
        <translation>vorher: tief</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>now: low</source>
        <translation>jetzt: tief</translation>
    </message>
    <message>
        <source>In the first table: low, one in ten is below; high, one in ten is above.</source>
        <translation>In der ersten Tabelle: tief, einer von zehn liegt darunter; hoch, einer von zehn darüber.</translation>
    </message>
    <message>
        <source>Before reading: 1 day in 10 is cooler</source>
        <translation>Vor dem Ablesen: 1 Tag von 10 ist kühler</translation>
    </message>
    <message>
        <source>Before reading: 1 day in 10 is warmer</source>
        <translation>Vor dem Ablesen: 1 Tag von 10 ist wärmer</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>Before reading 8 of 10 such days lie between the dotted lines</source>
        <translation>Vor dem Ablesen liegen 8 von 10 solchen Tagen zwischen den gepunkteten Linien</translation>
    </message>
    <message>
        <source>The likeliest day with the readings; before them 8 of 10 such days lie between the dotted lines</source>
        <translation>Der wahrscheinlichste Tag mit den Ablesungen; vor ihnen liegen 8 von 10 solchen Tagen zwischen den gepunkteten Linien</translation>
    </message>
    <message>
        <source>With the readings 8 of 10 such days lie in the wash; before them, between the dotted lines</source>
        <translation>Mit den Ablesungen liegen 8 von 10 solchen Tagen in der Fläche; vor ihnen zwischen den gepunkteten Linien</translation>
    </message>
</context>
<context>
    <name>Lever</name>
    <message>
        <source>the lid over the boil, %1 of the mouth open</source>
        <translation>der Deckel beim Kochen aufgelegt, %1 der Öffnung frei</translation>
    </message>
    <message>
        <source>the lid on until the boil begins</source>
        <translation>der Deckel auf, bis das Kochen beginnt</translation>
    </message>
    <message>
        <source>%1 of %2 around the side</source>
        <translation>%1 %2 um die Seite</translation>
    </message>
    <message>
        <source>%1 more around the side, of %2</source>
        <translation>%1 mehr um die Seite, aus %2</translation>
    </message>
    <message>
        <source>%1 of %2 on the lid</source>
        <translation>%1 %2 auf dem Deckel</translation>
    </message>
    <message>
        <source>%1 more on the lid, of %2</source>
        <translation>%1 mehr auf dem Deckel, aus %2</translation>
    </message>
    <message>
        <source>%1 of %2 under the base</source>
        <translation>%1 %2 unter dem Boden</translation>
    </message>
    <message>
        <source>%1 more under the base, of %2</source>
        <translation>%1 mehr unter dem Boden, aus %2</translation>
    </message>
    <message>
        <source>the bare metal polished bright</source>
        <translation>das blanke Metall hochglänzend poliert</translation>
    </message>
    <message>
        <source>the kettle on legs, with air beneath</source>
        <translation>der Kessel auf Beinen, mit Luft darunter</translation>
    </message>
    <message>
        <source>the kettle on a table, %1 of %2 under it</source>
        <translation>der Kessel auf einem Tisch, darunter %1 %2</translation>
    </message>
    <message>
        <source>water of %1 from the tap</source>
        <translation>Wasser von %1 aus der Leitung</translation>
    </message>
    <message>
        <source>a batch of %1 of water, and grain in proportion</source>
        <translation>ein Sud aus %1 Wasser, Malz im Verhältnis</translation>
    </message>
    <message>
        <source>a batch of %1, and grain in proportion</source>
        <translation>ein Sud von %1, Malz im Verhältnis</translation>
    </message>
    <message>
        <source>%1 of the power in the boil</source>
        <translation>%1 der Leistung beim Kochen</translation>
    </message>
    <message>
        <source>the day begun at %1</source>
        <translation>Beginn des Tages um %1</translation>
    </message>
    <message>
        <source>an element made for %1 must not be fed with %2</source>
        <translation>ein Heizelement für %1 darf nicht mit %2 gespeist werden</translation>
    </message>
    <message>
        <source>it would draw %1 from a circuit of %2</source>
        <translation>es zöge %1 aus einem Stromkreis von %2</translation>
    </message>
    <message>
        <source>an element of %1 at %2</source>
        <translation>ein Heizelement von %1 bei %2</translation>
    </message>
    <message>
        <source>the same element on a circuit of %1 and %2</source>
        <translation>dasselbe Heizelement an einem Stromkreis von %1 und %2</translation>
    </message>
    <message>
        <source>a circuit of %1 and %2 with an element of %3 at %4</source>
        <translation>ein Stromkreis von %1 und %2 mit einem Heizelement von %3 bei %4</translation>
    </message>
    <message>
        <source>a second element like the first, on a second such circuit</source>
        <translation>ein zweites Heizelement wie das erste, an einem zweiten solchen Stromkreis</translation>
    </message>
</context>
<context>
    <name>Phrases</name>
    <message>
        <source>%1 under the load</source>
        <translation>%1 unter der Last</translation>
    </message>
    <message>
        <source>the breaker of %1</source>
        <translation>die Sicherung für %1</translation>
    </message>
    <message>
        <source>what the other loads leave of the circuit</source>
        <translation>was die anderen Lasten vom Stromkreis übrig lassen</translation>
    </message>
    <message>
        <source>the element&apos;s own rating; supplies rise to 110 % of their nominal</source>
        <translation>die Nennspannung des Heizelements selbst; Netze steigen bis auf 110 % ihrer Nennspannung</translation>
    </message>
    <message>
        <source>%1 of %2 = %3 against %4, without it %5</source>
        <translation>%1 von %2 = %3 gegen %4, ohne das %5</translation>
    </message>
    <message>
        <source>An element of this size may leak up to %1 by its standard, and a %2 may trip from %3: expect trips while it is damp. Have it dried or replaced; never take the protection away or bypass it.</source>
        <translation>Ein Heizelement dieser Größe darf nach seiner Norm bis zu %1 ableiten, und ein Schutzgerät (%2) kann ab %3 auslösen: Solange es feucht ist, ist damit zu rechnen. Trocknen lassen oder ersetzen; den Schutz niemals entfernen oder überbrücken.</translation>
    </message>
    <message>
        <source>A load is continuous unless it is shown not to persist for more than 1 h in any 2 h (up to 225 A); without a marking for 100 % it may then take 80 % of the circuit.</source>
        <translation>Eine Last ist eine Dauerlast, wenn nicht gezeigt ist, dass sie in keinen 2 h länger als 1 h anhält (bis 225 A); ohne Kennzeichnung für 100 % darf sie dann 80 % des Stromkreises nehmen.</translation>
    </message>
    <message>
        <source>A load whose maximum current is expected to continue for 3 h or more; circuit and conductor then need 125 % of it.</source>
        <translation>Eine Last, deren größter Strom voraussichtlich 3 h oder länger anhält; Stromkreis und Leiter brauchen dann 125 % davon.</translation>
    </message>
    <message>
        <source>%1, the hottest of this mash. %2. (After Moritz &amp; Henriques 1947, tabled up to %3.) Children and older people burn faster, and wort clings. Keep children and pets at least %4 away.</source>
        <translation>%1, das Heißeste dieser Maische. %2. (Nach Moritz &amp; Henriques 1947, tabelliert bis %3.) Kinder und alte Menschen verbrennen schneller, und Würze haftet. Kinder und Haustiere mindestens %4 fernhalten.</translation>
    </message>
    <message>
        <source>%1. (After Moritz &amp; Henriques 1947, tabled up to %2.) Children and older people burn faster, and wort clings. Keep children and pets at least %3 away.</source>
        <translation>%1. (Nach Moritz &amp; Henriques 1947, tabelliert bis %2.) Kinder und alte Menschen verbrennen schneller, und Würze haftet. Kinder und Haustiere mindestens %3 fernhalten.</translation>
    </message>
    <message>
        <source>At %1 bare skin burns to the second degree in %2 and to the third in %3 at the most</source>
        <translation>Bei %1 verbrennt bloße Haut in höchstens %2 zweiten und in höchstens %3 dritten Grades</translation>
    </message>
    <message>
        <source>At %1 bare skin burns to the second degree in %2 and to the third in %3</source>
        <translation>Bei %1 verbrennt bloße Haut in %2 zweiten und in %3 dritten Grades</translation>
    </message>
    <message>
        <source>Vents, drains and lids stay open while it heats: at %1 trapped steam would already push on a lid of %2 like a weight of %3.</source>
        <translation>Öffnungen, Abläufe und Deckel bleiben beim Heizen offen: Bei %1 würde eingeschlossener Dampf auf einen Deckel von %2 schon drücken wie ein Gewicht von %3.</translation>
    </message>
    <message>
        <source>United States</source>
        <translation>Vereinigte Staaten</translation>
    </message>
    <message>
        <source>Canada</source>
        <translation>Kanada</translation>
    </message>
    <message>
        <source>Europe</source>
        <translation>Europa</translation>
    </message>
    <message>
        <source>United Kingdom</source>
        <translation>Vereinigtes Königreich</translation>
    </message>
    <message>
        <source>Australia and New Zealand</source>
        <translation>Australien und Neuseeland</translation>
    </message>
    <message>
        <source>Japan</source>
        <translation>Japan</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>gerechnet</translation>
    </message>
    <message>
        <source>from memory, check</source>
        <translation>aus dem Gedächtnis, prüfen</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>fits only if</source>
        <translation>passt nur, wenn</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <source>supply voltage</source>
        <translation>Netzspannung</translation>
    </message>
    <message>
        <source>over-voltage</source>
        <translation>Überspannung</translation>
    </message>
    <message>
        <source>the circuit&apos;s rating</source>
        <translation>Nennstrom des Stromkreises</translation>
    </message>
    <message>
        <source>the circuit&apos;s rating, other loads included</source>
        <translation>Nennstrom des Stromkreises, andere Lasten mitgezählt</translation>
    </message>
    <message>
        <source>continuous load</source>
        <translation>Dauerlast</translation>
    </message>
    <message>
        <source>one plug-in load on a circuit with several outlets</source>
        <translation>eine steckbare Last an einem Stromkreis mit mehreren Steckdosen</translation>
    </message>
    <message>
        <source>outlet among several on a circuit</source>
        <translation>Steckdose unter mehreren an einem Stromkreis</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>Steckdose</translation>
    </message>
    <message>
        <source>outlet %1 on the circuit</source>
        <translation>Steckdose %1 am Stromkreis</translation>
    </message>
    <message>
        <source>neutral of %1</source>
        <translation>Neutralleiter von %1</translation>
    </message>
    <message>
        <source>earth of %1</source>
        <translation>Schutzleiter von %1</translation>
    </message>
    <message>
        <source>both sockets of %1</source>
        <translation>beide Buchsen von %1</translation>
    </message>
    <message>
        <source>long use of a household socket</source>
        <translation>Haushaltssteckdose auf Dauer</translation>
    </message>
    <message>
        <source>largest breaker for one appliance</source>
        <translation>größte Sicherung für ein Gerät</translation>
    </message>
    <message>
        <source>division of large heaters</source>
        <translation>Aufteilung großer Heizungen</translation>
    </message>
    <message>
        <source>the cable</source>
        <translation>die Leitung</translation>
    </message>
    <message>
        <source>Class A GFCI</source>
        <translation>Fehlerstromschutz (GFCI) Klasse A</translation>
    </message>
    <message>
        <source>30 mA RCD</source>
        <translation>Fehlerstromschutz (RCD) 30 mA</translation>
    </message>
    <message>
        <source>the circuit&apos;s whole rating</source>
        <translation>der ganze Nennstrom</translation>
    </message>
    <message>
        <source>a household socket for hours</source>
        <translation>Haushaltssteckdose über Stunden</translation>
    </message>
    <message>
        <source>the circuit feeds one outlet alone</source>
        <translation>der Stromkreis nur eine einzige Steckdose speist</translation>
    </message>
    <message>
        <source>socket and plug stand that for as long as it takes</source>
        <translation>Steckdose und Stecker das so lange aushalten</translation>
    </message>
    <message>
        <source>the kettle&apos;s maker marks it for a circuit of %1, or its own control has a smaller fuse</source>
        <translation>der Hersteller des Kessels ihn für einen Stromkreis von %1 kennzeichnet oder die eigene Steuerung eine kleinere Sicherung hat</translation>
    </message>
    <message>
        <source>more than the recommended drop is accepted</source>
        <translation>mehr als der empfohlene Spannungsfall in Kauf genommen wird</translation>
    </message>
    <message>
        <source>the column for NM-B cable and for circuits up to 100 A unless every termination is marked 75 C (110.14(C), 334.80)</source>
        <translation>die Spalte für NM-B-Leitungen und für Stromkreise bis 100 A gilt, sofern nicht jede Klemme mit 75 °C gekennzeichnet ist (110.14(C), 334.80)</translation>
    </message>
    <message>
        <source>only where every termination is marked 75 C (110.14(C))</source>
        <translation>jede Klemme mit 75 °C gekennzeichnet ist (110.14(C))</translation>
    </message>
    <message>
        <source>for corrections only; the termination keeps its own column</source>
        <translation>die Spalte nur zur Umrechnung dient; die Klemme behält ihre eigene</translation>
    </message>
    <message>
        <source>%1 is no supply voltage of %2; there it is %3</source>
        <translation>%1 ist keine Netzspannung (%2); dort sind es %3</translation>
    </message>
    <message>
        <source>no outlet called %1 is among those of %2</source>
        <translation>unter den Steckdosen (%2) heißt keine %1</translation>
    </message>
    <message>
        <source>it is made for %1</source>
        <translation>sie ist für %1 gemacht</translation>
    </message>
    <message>
        <source>it has no neutral for the pump&apos;s %1; earth is not a neutral</source>
        <translation>ihr fehlt der Neutralleiter für die %1 der Pumpe; der Schutzleiter ist keiner</translation>
    </message>
    <message>
        <source>it has no earth contact, which a metal kettle needs</source>
        <translation>ihr fehlt der Schutzkontakt, den ein Kessel aus Metall braucht</translation>
    </message>
    <message>
        <source>no table of conductors is at hand for %1</source>
        <translation>es liegt keine Leitertabelle vor (%1)</translation>
    </message>
    <message>
        <source>the plan does not say whether the cable is a building wire, a cord or an extension set (&quot;use&quot;)</source>
        <translation>der Plan sagt nicht, ob die Leitung fest verlegt, ein Gerätekabel oder eine Verlängerung ist</translation>
    </message>
    <message>
        <source>no table has this size and length; the nearest is %1</source>
        <translation>keine Tabelle hat diesen Querschnitt und diese Länge; am nächsten ist %1</translation>
    </message>
    <message>
        <source>no table has this size and length</source>
        <translation>keine Tabelle hat diesen Querschnitt und diese Länge</translation>
    </message>
    <message>
        <source>Receptacles of 125 to 250 V in kitchens, basements, garages, laundries, outdoors and within 6 ft of a sink need it (210.8(A), 2023 wording; places differ).</source>
        <translation>Steckdosen von 125 bis 250 V in Küche, Keller, Garage, Waschküche, im Freien und bis 6 ft (1,8 m) vom Spülbecken brauchen ihn (210.8(A), Wortlaut 2023; je nach Ort verschieden).</translation>
    </message>
    <message>
        <source>Receptacles near sinks and outdoors need it.</source>
        <translation>Steckdosen nahe Spülbecken und im Freien brauchen ihn.</translation>
    </message>
    <message>
        <source>Socket circuits up to 32 A need a residual-current device of 30 mA or less. It may trip from half its rating; that half is from memory.</source>
        <translation>Steckdosenkreise bis 32 A brauchen einen Fehlerstromschutz von 30 mA oder weniger. Er darf ab der Hälfte auslösen; diese Hälfte ist aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Socket-outlets up to 32 A need a residual-current device of 30 mA. Keep standing leakage below 30 % of that (531.3.2, from memory).</source>
        <translation>Steckdosen bis 32 A brauchen einen Fehlerstromschutz von 30 mA. Ständige Ableitströme sollen unter 30 % davon bleiben (531.3.2, aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>All final circuits of Australian dwellings need 30 mA; New Zealand asks for less.</source>
        <translation>Alle Endstromkreise australischer Wohnungen brauchen 30 mA; Neuseeland verlangt weniger.</translation>
    </message>
    <message>
        <source>Wet places need a leakage breaker of 30 mA or finer (15 mA is common).</source>
        <translation>Feuchte Orte brauchen einen Fehlerstromschutz von 30 mA oder feiner (üblich sind 15 mA).</translation>
    </message>
    <message>
        <source>an element rated at %1 would give %2 times its power and surface load; use one rated for this supply</source>
        <translation>ein Heizelement für %1 gäbe das %2-fache an Leistung und Oberflächenlast; nehmen Sie eines für diese Spannung</translation>
    </message>
    <message>
        <source>%1 outlet on a circuit of %2</source>
        <translation>Steckdose von %1 an einem Stromkreis von %2</translation>
    </message>
    <message>
        <source>%1 for %2, above %3 for longer than %4</source>
        <translation>%1 über %2, mehr als %3 länger als %4</translation>
    </message>
    <message>
        <source>a breaker of %1 for an appliance of %2 without a marked one; the most is %3</source>
        <translation>eine Sicherung von %1 für ein Gerät von %2 ohne eigene Angabe; höchstens %3</translation>
    </message>
    <message>
        <source>a breaker of %1, the most is %2</source>
        <translation>eine Sicherung von %1, höchstens %2</translation>
    </message>
    <message>
        <source>an element of this power may leak %1, the device may trip from %2</source>
        <translation>ein Heizelement dieser Leistung darf %1 ableiten, der Schutz darf ab %2 auslösen</translation>
    </message>
    <message>
        <source>the device may trip from %1</source>
        <translation>der Schutz darf ab %1 auslösen</translation>
    </message>
    <message>
        <source>current flows for %1 in the fullest %2, the element is enabled for %3 of it, the rule counts from %4</source>
        <translation>Strom fließt %1 lang in den vollsten %2, davon ist das Heizelement %3 bereit, die Regel zählt ab %4</translation>
    </message>
    <message>
        <source>current flows for %1 without a break, the element is enabled for %2 on end, the rule counts from %3</source>
        <translation>Strom fließt %1 ohne Pause, das Heizelement ist %2 am Stück bereit, die Regel zählt ab %3</translation>
    </message>
    <message>
        <source>%1 against %2, a recommendation</source>
        <translation>%1 gegen %2, eine Empfehlung</translation>
    </message>
    <message>
        <source>%1 against %2 of %3 = %4</source>
        <translation>%1 gegen %2 von %3 = %4</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 gegen %2</translation>
    </message>
    <message>
        <source>Metal kettle, stand and pump must be earthed through the supply. Never cut an earth pin or use an adaptor without one.</source>
        <translation>Kessel, Gestell und Pumpe aus Metall müssen über den Anschluss geerdet sein. Nie einen Schutzkontakt entfernen oder einen Adapter ohne ihn verwenden.</translation>
    </message>
    <message>
        <source>An element that was stored damp may leak and trip the protection: have it dried or replaced, never bypass the protection.</source>
        <translation>Ein feucht gelagertes Heizelement kann ableiten und den Schutz auslösen: trocknen oder ersetzen lassen, nie den Schutz überbrücken.</translation>
    </message>
    <message>
        <source>Dry firing: %1. In air an element&apos;s sheath goes to %2 in seconds; switch off before draining or transferring.</source>
        <translation>Trockenlauf: %1. An der Luft wird der Mantel eines Heizelements in Sekunden %2 heiß; vor dem Ablassen oder Umpumpen ausschalten.</translation>
    </message>
    <message>
        <source>Head-space at the fullest moment: %1. Reduce power before the boil and at additions.</source>
        <translation>Freiraum im vollsten Augenblick: %1. Vor dem Kochen und bei Gaben die Leistung senken.</translation>
    </message>
    <message>
        <source>A flexible cord or extension has its own, lower limit; for a time only, fully uncoiled and uncovered, with an earth wire. If a plug or cord is more than warm, switch off.</source>
        <translation>Ein Kabel oder eine Verlängerung hat eine eigene, niedrigere Grenze; nur auf Zeit, ganz abgewickelt und unbedeckt, mit Schutzleiter. Ist Stecker oder Kabel mehr als warm: ausschalten.</translation>
    </message>
    <message>
        <source>A full kettle weighs up to %1, more than the %2 that one person lifts under ideal conditions (NIOSH). Do not carry hot liquid: let it run, pump or siphon.</source>
        <translation>Ein voller Kessel wiegt bis zu %1, mehr als die %2, die eine Person unter besten Umständen hebt (NIOSH). Heißes nicht tragen: laufen lassen, pumpen oder hebern.</translation>
    </message>
    <message>
        <source>Stay with a heating kettle; do not leave it on a timer or a remote start without someone present who can switch it off.</source>
        <translation>Bleiben Sie beim heizenden Kessel; keine Zeitschaltung und kein Fernstart, wenn niemand da ist, der ausschalten kann.</translation>
    </message>
    <message>
        <source>Wort is between %1 and %2 for %3 of this day. Food service passes from %4 to %5 within 2 h and to %6 within 6 h (FDA Food Code 3-501.14); always boil after a luke-warm hold, and do not count on the boil to undo many warm hours.</source>
        <translation>Die Würze ist an diesem Tag %3 lang zwischen %1 und %2. Großküchen kühlen in 2 h von %4 auf %5 und in 6 h auf %6 (FDA Food Code 3-501.14); nach lauwarmer Zeit immer kochen, und nicht darauf bauen, dass Kochen viele warme Stunden ungeschehen macht.</translation>
    </message>
    <message>
        <source>Do not seal unfermented wort for storage at room temperature: botulism spores survive boiling. Pitch promptly.</source>
        <translation>Unvergorene Würze nicht luftdicht bei Raumtemperatur lagern: Botulismus-Sporen überleben das Kochen. Bald anstellen.</translation>
    </message>
    <message>
        <source>This day releases up to %1 of water vapour. Extract it outdoors and let replacement air in. Check that fuel-burning appliances do not draw back.</source>
        <translation>Dieser Tag setzt bis zu %1 Wasserdampf frei. Führen Sie ihn ins Freie ab und lassen Sie Luft nachströmen. Prüfen Sie, dass Feuerstätten dabei nicht zurückziehen.</translation>
    </message>
    <message>
        <source>%1 keeps %2</source>
        <translation>%1 behält %2</translation>
    </message>
    <message>
        <source>outlet %1</source>
        <translation>Steckdose %1</translation>
    </message>
    <message>
        <source>at least %1 of copper would keep it</source>
        <translation>mit mindestens %1 Kupfer wäre das eingehalten</translation>
    </message>
    <message>
        <source>up to %1 (%2) of this cable keep it</source>
        <translation>bis %1 (%2) Länge wäre das mit diesem Kabel eingehalten</translation>
    </message>
    <message>
        <source>%1: %2 That may be so here: %3. An inspector&apos;s or electrician&apos;s judgement decides; the stricter result is shown.</source>
        <translation>%1: %2 Das kann hier gelten: %3. Es entscheiden Prüfer oder Elektriker; gezeigt ist das strengere Ergebnis.</translation>
    </message>
    <message>
        <source>Below its rated voltage an element gives less: %1. All times here count with that. Do not fit a larger one to make up for it without having the circuit checked again.</source>
        <translation>Unter seiner Nennspannung gibt ein Heizelement weniger: %1. Alle Zeiten hier rechnen damit. Kein größeres zum Ausgleich einbauen, ohne den Stromkreis erneut prüfen zu lassen.</translation>
    </message>
    <message>
        <source>%1: %2 of its element&apos;s rating, %3 on %4</source>
        <translation>%1: %2 der Nennleistung seines Heizelements, %3 an %4</translation>
    </message>
    <message>
        <source>%1: %2 in place of %3</source>
        <translation>%1: %2 anstelle von %3</translation>
    </message>
    <message>
        <source>%1 needs %2 to cover its element and has %3 at the least with it on</source>
        <translation>%1 braucht %2, um das Heizelement zu bedecken, und hat bei eingeschaltetem mindestens %3</translation>
    </message>
    <message>
        <source>BS 7671 4F3A has 16 A for 1.5, 25 A for 2.5, 32 A for 4 mm2, from memory; the lower figures are used while no edition is named</source>
        <translation>BS 7671 4F3A nennt 16 A für 1,5, 25 A für 2,5, 32 A für 4 mm2, aus dem Gedächtnis; die kleineren Zahlen gelten, solange keine Ausgabe genannt ist</translation>
    </message>
    <message>
        <source>Heating appliances above 48 A are divided into loads of up to 48 A, each protected at up to 60 A.</source>
        <translation>Heizgeräte über 48 A werden in Lasten bis 48 A geteilt, jede mit höchstens 60 A gesichert.</translation>
    </message>
    <message>
        <source>Household sockets and plugs are not made for hours near their rating; sources disagree on how much is too much. Feel whether the plug gets warm.</source>
        <translation>Haushaltssteckdosen und -stecker sind nicht für Stunden nahe ihrem Nennstrom gemacht; die Quellen sind uneins, wie viel zu viel ist. Fühlen Sie, ob der Stecker warm wird.</translation>
    </message>
    <message>
        <source>Where a conductor&apos;s ampacity is no standard size, the next standard size may protect it, on a circuit that does not feed several outlets for plug-in loads.</source>
        <translation>Ist die Strombelastbarkeit eines Leiters keine Normgröße, darf die nächste Normgröße ihn schützen, in einem Stromkreis, der nicht mehrere Steckdosen für steckbare Geräte speist.</translation>
    </message>
    <message>
        <source>branch circuit</source>
        <translation>Endstromkreis</translation>
    </message>
    <message>
        <source>whole way</source>
        <translation>ganzer Weg</translation>
    </message>
    <message>
        <source>listed sets only within their label; for a time only, uncoiled</source>
        <translation>geprüfte Verlängerungen nur innerhalb ihrer Angaben; nur auf Zeit, abgerollt</translation>
    </message>
    <message>
        <source>no earth contact: not for new work since 1996</source>
        <translation>kein Schutzkontakt: seit 1996 nicht mehr für neue Anlagen</translation>
    </message>
    <message>
        <source>some heaters count as continuous however they cycle (storage water heaters, 422.13); an inspector may read a held kettle that way</source>
        <translation>manche Heizgeräte gelten als Dauerlast, wie sie auch takten (Speicherwassererwärmer, 422.13); ein Prüfer kann einen Kessel auf Temperatur so auslegen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 [%2]</source>
        <translation>%1 [%2]</translation>
    </message>
    <message>
        <source>%1, %2 %3</source>
        <translation>%1, %2 %3</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 against %2 of %3 = %4, no more than %5 of its terminations</source>
        <translation>%1 gegen %2 von %3 = %4, höchstens aber %5 seiner Klemmen</translation>
    </message>
    <message>
        <source>%1 against %2 of its terminations</source>
        <translation>%1 gegen %2 seiner Klemmen</translation>
    </message>
    <message>
        <source>%1 beside the other loads</source>
        <translation>%1 neben den anderen Lasten</translation>
    </message>
    <message>
        <source>%1 under a %2</source>
        <translation>%1 unter %2</translation>
    </message>
    <message>
        <source>%1 up to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 with %2 of copper</source>
        <translation>%1 mit %2 Kupfer</translation>
    </message>
    <message>
        <source>%1, and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1, or %2</source>
        <translation>%1, oder %2</translation>
    </message>
    <message>
        <source>%1: fits, %2.</source>
        <translation>%1: passt, %2.</translation>
    </message>
    <message>
        <source>%1; and if %2</source>
        <translation>%1; und wenn %2</translation>
    </message>
    <message>
        <source>Expect it to trip now and then while the element is damp: dry or replace the element, and never take the protection away.</source>
        <translation>Solange das Heizelement feucht ist, kann er hin und wieder auslösen: Trocknen oder ersetzen Sie das Heizelement, und entfernen Sie den Schutz niemals.</translation>
    </message>
    <message>
        <source>For information, not to be installed by this: the standard size for %1 is %2.</source>
        <translation>Zur Kenntnis, danach ist nichts zu installieren: Die übliche Sicherung für %1 ist %2.</translation>
    </message>
    <message>
        <source>For information, not to be installed by this: the standard size for %1 is %2; counted as continuous, %3.</source>
        <translation>Zur Kenntnis, danach ist nichts zu installieren: Die übliche Sicherung für %1 ist %2; als Dauerlast gezählt %3.</translation>
    </message>
    <message>
        <source>a %1 asks no such margin of a cord, which electricians argue about; an electrician&apos;s or inspector&apos;s judgement decides</source>
        <translation>für eine Anschlussleitung kein solcher Zuschlag gilt (%1), worüber Elektriker streiten; es entscheiden Elektriker oder Prüfer</translation>
    </message>
    <message>
        <source>advice: %1</source>
        <translation>Rat: %1</translation>
    </message>
    <message>
        <source>cannot say: %1</source>
        <translation>unbekannt: %1</translation>
    </message>
    <message>
        <source>counted as %1</source>
        <translation>als %1 gezählt</translation>
    </message>
    <message>
        <source>every termination is marked for %1 (%2)</source>
        <translation>jede Klemme für %1 gekennzeichnet ist (%2)</translation>
    </message>
    <message>
        <source>fits only if %1</source>
        <translation>passt nur, wenn %1</translation>
    </message>
    <message>
        <source>its table is for up to %1 and has no factor for %2</source>
        <translation>die Tabelle dafür reicht bis %1 und hat keinen Faktor für %2</translation>
    </message>
    <message>
        <source>no factor for %1 loaded conductors is at hand</source>
        <translation>es liegt kein Faktor für %1 belastete Leiter vor</translation>
    </message>
    <message>
        <source>the load is divided; %1</source>
        <translation>die Last aufgeteilt ist: %1</translation>
    </message>
    <message>
        <source>the time with the element merely enabled does not count as a %1; an electrician&apos;s or inspector&apos;s judgement decides</source>
        <translation>die Zeit, in der das Heizelement nur bereit ist, nicht als %1 zählt; es entscheiden Elektriker oder Prüfer</translation>
    </message>
    <message>
        <source>voltage drop, %1</source>
        <translation>Spannungsfall, %1</translation>
    </message>
    <message>
        <source>service, Range A</source>
        <translation>am Hausanschluss, Bereich A</translation>
    </message>
    <message>
        <source>service, Range B</source>
        <translation>am Hausanschluss, Bereich B</translation>
    </message>
    <message>
        <source>utilization, Range A</source>
        <translation>am Gerät, Bereich A</translation>
    </message>
    <message>
        <source>utilization, Range B</source>
        <translation>am Gerät, Bereich B</translation>
    </message>
    <message>
        <source>+-10 %, 95 % of 10-minute means</source>
        <translation>±10 %, 95 % der 10-Minuten-Mittel</translation>
    </message>
    <message>
        <source>+10/-15 %, all 10-minute means</source>
        <translation>+10/-15 %, alle 10-Minuten-Mittel</translation>
    </message>
    <message>
        <source>on the edge</source>
        <translation>an der Grenze</translation>
    </message>
    <message>
        <source>the fuse&apos;s rating</source>
        <translation>die Nennstromstärke der Schmelzsicherung</translation>
    </message>
    <message>
        <source>the fuse&apos;s rating, other loads included</source>
        <translation>die Nennstromstärke der Schmelzsicherung, mit den anderen Verbrauchern</translation>
    </message>
    <message>
        <source>%1 against %2, %3 more</source>
        <translation>%1 gegen %2, %3 mehr</translation>
    </message>
    <message>
        <source>a fuse of that size carries %1 for at least %2, so it does not protect plug and outlet from this: they get warm</source>
        <translation>eine Schmelzsicherung dieser Größe trägt %1 mindestens %2 lang und schützt Stecker und Steckdose davor also nicht: Sie werden warm</translation>
    </message>
    <message>
        <source>a fuse of that size carries %1 for at least %2 and must blow only from %3 on, within %4: plug and outlet may get hot before</source>
        <translation>eine Schmelzsicherung dieser Größe trägt %1 mindestens %2 lang und muss erst ab %3 durchbrennen, innerhalb von %4: Stecker und Steckdose können vorher heiß werden</translation>
    </message>
    <message>
        <source>a fuse of that size blows from %1 on, within %2 at the latest</source>
        <translation>eine Schmelzsicherung dieser Größe brennt ab %1 durch, nach spätestens %2</translation>
    </message>
    <message>
        <source>a breaker of that size carries %1 for at least %2, so it does not protect cable and outlet from this: they get warm</source>
        <translation>ein Leitungsschutzschalter dieser Größe trägt %1 mindestens %2 lang und schützt Kabel und Steckdose davor also nicht: Sie werden warm</translation>
    </message>
    <message>
        <source>a breaker of that size carries %1 for at least %2 and must trip only from %3 on, within %4: cable and outlet may get hot before</source>
        <translation>ein Leitungsschutzschalter dieser Größe trägt %1 mindestens %2 lang und muss erst ab %3 auslösen, innerhalb von %4: Kabel und Steckdose können vorher heiß werden</translation>
    </message>
    <message>
        <source>a breaker of that size trips from %1 on, within %2 at the latest</source>
        <translation>ein Leitungsschutzschalter dieser Größe löst ab %1 aus, nach spätestens %2</translation>
    </message>
    <message>
        <source>how soon its fuse blows is not known here</source>
        <translation>wie bald die Schmelzsicherung durchbrennt, ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>how soon its breaker or fuse acts is not known here</source>
        <translation>wie bald Schutzschalter oder Schmelzsicherung abschalten, ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>on the edge: an element may take a few percent more or less than its plate says; have the current measured, or leave room with less power</source>
        <translation>an der Grenze: Ein Heizelement darf einige Prozent mehr oder weniger aufnehmen, als auf seinem Schild steht; lassen Sie den Strom messen, oder halten Sie mit weniger Leistung Abstand</translation>
    </message>
    <message>
        <source>on the edge: %1</source>
        <translation>an der Grenze: %1</translation>
    </message>
    <message>
        <source>does not fit: %1</source>
        <translation>passt nicht: %1</translation>
    </message>
    <message>
        <source>For information, not to be installed by this: no fuse of its kind is larger than %1, so no plug with one carries more; the standard size of a breaker for %2 is %3.</source>
        <translation>Nur zur Kenntnis, nicht danach zu installieren: Keine Schmelzsicherung dieser Art ist größer als %1, kein Stecker mit einer trägt also mehr; die Normgröße eines Leitungsschutzschalters für %2 ist %3.</translation>
    </message>
    <message>
        <source>BS 1362: conventional non-fusing and fusing current</source>
        <translation>BS 1362: kleiner und großer Prüfstrom</translation>
    </message>
    <message>
        <source>BS 1362, quoted in a science note of 2025 and in electricians&apos; texts; largest link by the scope of the standard</source>
        <translation>BS 1362, zitiert in einem Fachtext von 2025 und in Texten von Elektrikern; größte Sicherung nach dem Anwendungsbereich der Norm</translation>
    </message>
    <message>
        <source>%1 is no nominal voltage of %2 but within what its %3 may be: if it was measured, state %3, at which codes count</source>
        <translation>%1 ist keine Nennspannung (%2), liegt aber in dem, was dort %3 sein dürfen: Wurde sie gemessen, geben Sie %3 an, bei denen Normen zählen</translation>
    </message>
    <message>
        <source>no table of extension sets is at hand for %1</source>
        <translation>es liegt keine Tabelle der Verlängerungsleitungen vor (%1)</translation>
    </message>
    <message>
        <source>no table of cords is at hand for %1</source>
        <translation>es liegt keine Tabelle der flexiblen Leitungen vor (%1)</translation>
    </message>
    <message>
        <source>no table of building wires is at hand for %1</source>
        <translation>es liegt keine Tabelle der fest verlegten Leitungen vor (%1)</translation>
    </message>
    <message>
        <source>by name plates alone</source>
        <translation>allein nach den Typenschildern</translation>
    </message>
    <message>
        <source>this very outlet has an earth contact that is connected, which is not known here and which a metal kettle needs</source>
        <translation>genau diese Steckdose einen angeschlossenen Schutzkontakt hat, was hier nicht bekannt ist und was ein Metallkessel braucht</translation>
    </message>
    <message>
        <source>Generic IEC</source>
        <translation>IEC allgemein</translation>
    </message>
    <message>
        <source>Brazil</source>
        <translation>Brasilien</translation>
    </message>
    <message>
        <source>Mexico</source>
        <translation>Mexiko</translation>
    </message>
    <message>
        <source>Socket circuits need a residual-current device of 30 mA or less; up to which rating differs by country. It may trip from half its rating; that half is from memory.</source>
        <translation>Steckdosenstromkreise brauchen eine Fehlerstrom-Schutzeinrichtung (RCD) von 30 mA oder weniger; bis zu welcher Nennstromstärke, ist von Land zu Land verschieden. Sie kann ab der Hälfte ihres Nennwerts auslösen; diese Hälfte ist aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Wet places, kitchens and outdoor sockets need a residual-current device of 30 mA or less.</source>
        <translation>Feuchte Orte, Küchen und Steckdosen im Freien brauchen eine Fehlerstrom-Schutzeinrichtung (RCD) von 30 mA oder weniger.</translation>
    </message>
    <message>
        <source>it</source>
        <translation>er</translation>
    </message>
    <message>
        <source>the slowest (%1)</source>
        <translation>der langsamste (%1)</translation>
    </message>
    <message>
        <source>The plan says nothing of cooling, and no hours after the boil are counted. Left in the kettle to cool by itself, lid as in the mash, %1 would take about %2 to come down to %3 and %4 more to %5 (one time constant of %6, an estimate). Food service allows 2 h for that, a time constant of %7 here, and 6 h to %8, which air of this room never gives (FDA Food Code 3-501.14). What doubles every 20 min (USDA) is %9 times as much after 2 h. Cool quickly and pitch promptly.</source>
        <translation>Der Plan sagt nichts über das Kühlen, und Stunden nach dem Kochen sind nicht gezählt. Im Kessel sich selbst überlassen, Deckel wie beim Maischen, bräuchte %1 etwa %2 bis %3 und %4 mehr bis %5 (eine Zeitkonstante von %6, eine Schätzung). Die Gastronomie erlaubt dafür 2 h, hier eine Zeitkonstante von %7, und 6 h bis %8, was die Luft dieses Raums nie schafft (FDA Food Code 3-501.14). Was sich alle 20 min verdoppelt (USDA), ist nach 2 h das %9fache. Schnell kühlen und bald anstellen.</translation>
    </message>
    <message>
        <source>The plan says nothing of cooling, and no hours after the boil are counted. Left in the kettle to cool by itself, lid as in the mash, %1 would take about %2 to come down to %3 and %4 more to %5 (one time constant of %6, an estimate). Food service allows 2 h for that, a time constant of %7 here, and 6 h to %8 (FDA Food Code 3-501.14). What doubles every 20 min (USDA) is %9 times as much after 2 h. Cool quickly and pitch promptly.</source>
        <translation>Der Plan sagt nichts über das Kühlen, und Stunden nach dem Kochen sind nicht gezählt. Im Kessel sich selbst überlassen, Deckel wie beim Maischen, bräuchte %1 etwa %2 bis %3 und %4 mehr bis %5 (eine Zeitkonstante von %6, eine Schätzung). Die Gastronomie erlaubt dafür 2 h, hier eine Zeitkonstante von %7, und 6 h bis %8 (FDA Food Code 3-501.14). Was sich alle 20 min verdoppelt (USDA), ist nach 2 h das %9fache. Schnell kühlen und bald anstellen.</translation>
    </message>
    <message>
        <source>The plan says nothing of cooling, and no hours after the boil are counted. Left in the kettle to cool by itself, lid as in the mash, %1 would never come down to %2 in this room (one time constant of %3, an estimate). Food service allows 2 h for that, and 6 h to %4, which air of this room never gives (FDA Food Code 3-501.14). What doubles every 20 min (USDA) is %5 times as much after 2 h. Cool quickly and pitch promptly.</source>
        <translation>Der Plan sagt nichts über das Kühlen, und Stunden nach dem Kochen sind nicht gezählt. Im Kessel sich selbst überlassen, Deckel wie beim Maischen, käme %1 in diesem Raum nie auf %2 herunter (eine Zeitkonstante von %3, eine Schätzung). Die Gastronomie erlaubt dafür 2 h, und 6 h bis %4, was die Luft dieses Raums nie schafft (FDA Food Code 3-501.14). Was sich alle 20 min verdoppelt (USDA), ist nach 2 h das %5fache. Schnell kühlen und bald anstellen.</translation>
    </message>
    <message>
        <source>For planning only: rules, adopted editions and inspections differ by place; local codes decide. Have a licensed electrician check circuit, protection, plug, cord and enclosure before use; follow the maker&apos;s instructions.</source>
        <translation>Nur zur Planung: Regeln, geltende Fassungen und Abnahmen sind je nach Ort verschieden; es entscheiden die örtlichen Vorschriften. Lassen Sie vor dem Gebrauch eine Elektrofachkraft Stromkreis, Schutz, Stecker, Kabel und Gehäuse prüfen; folgen Sie den Anleitungen der Hersteller.</translation>
    </message>
    <message>
        <source>No hours after the boil are counted here: how long it takes to chill is a question of its own. Food service allows 2 h from %1 to %2 and 6 h to %3 (FDA Food Code 3-501.14). Cool quickly and pitch promptly.</source>
        <translation>Stunden nach dem Kochen sind hier nicht gezählt: Wie lange das Kühlen dauert, ist eine eigene Frage. Die Lebensmittelaufsicht erlaubt 2 h von %1 auf %2 und 6 h auf %3 (FDA Food Code 3-501.14). Kühlen Sie rasch und stellen Sie zügig an.</translation>
    </message>
    <message>
        <source>What goes in as the boil ends leaves wort below %1 at once, where bacteria grow in it until yeast has taken over. Food service allows 2 h from there to %2, and 6 h to %3 (FDA Food Code 3-501.14). Cool quickly and pitch promptly.</source>
        <translation>Was zum Ende des Kochens hineinkommt, lässt Würze sofort unter %1 zurück, wo Bakterien darin wachsen, bis Hefe überhandgenommen hat. Die Gastronomie darf sich 2 h von dort bis %2 nehmen, und 6 h bis %3 (FDA Food Code 3-501.14). Rasch kühlen und bald anstellen.</translation>
    </message>
    <message>
        <source>the rinsing water&apos;s heater</source>
        <translation>das Heizgerät für das Nachgusswasser</translation>
    </message>
    <message>
        <source>the rinsing water&apos;s heater, whose load is not known here and must be added, takes less than the %1 that are left, or is never on together with the element</source>
        <translation>das Heizgerät für das Nachgusswasser, dessen Last hier nicht bekannt ist und dazugezählt werden muss, weniger als die übrigen %1 nimmt oder nie zugleich mit dem Heizelement an ist</translation>
    </message>
    <message>
        <source>the rinsing water&apos;s heater, whose load is not known here and must be added, is never on together with the element</source>
        <translation>das Heizgerät für das Nachgusswasser, dessen Last hier nicht bekannt ist und dazugezählt werden muss, nie zugleich mit dem Heizelement an ist</translation>
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
        <translation>Stromkreis</translation>
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
    <message>
        <source>Outlet</source>
        <translation>Steckdose</translation>
    </message>
    <message>
        <source>What the plug goes into, by the names of the region&apos;s rules. Left empty: the outlet is not judged.</source>
        <translation>Worein der Stecker kommt, mit den Namen der Regeln der Region. Leer: Die Steckdose wird nicht beurteilt.</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>unbeurteilt</translation>
    </message>
    <message>
        <source>Feeds</source>
        <translation>Speist</translation>
    </message>
    <message>
        <source>Whether the circuit feeds one outlet alone or several, which some rules treat differently. Left empty: both are told.</source>
        <translation>Ob der Stromkreis eine einzige Steckdose speist oder mehrere, was manche Regeln unterscheiden. Leer: Beides wird gesagt.</translation>
    </message>
    <message>
        <source>both told</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>Other loads</source>
        <translation>Andere Lasten</translation>
    </message>
    <message>
        <source>Power of whatever else runs on the circuit at the same time, 0 to 20 kW.</source>
        <translation>Leistung von allem anderen, was zugleich am Stromkreis läuft, 0 bis 20 kW.</translation>
    </message>
    <message>
        <source>How the cable is used</source>
        <translation>Wie die Leitung dient</translation>
    </message>
    <message>
        <source>Used as</source>
        <translation>Dient als</translation>
    </message>
    <message>
        <source>Decides which table of conductors applies. Left empty: the conductor is not judged.</source>
        <translation>Entscheidet, welche Leitertabelle gilt. Leer: Der Leiter wird nicht beurteilt.</translation>
    </message>
    <message>
        <source>Insulation for</source>
        <translation>Isolierung für</translation>
    </message>
    <message>
        <source>Temperature that the insulation is made for, 40 to 200 °C; the most cautious table if not stated.</source>
        <translation>Temperatur, für die die Isolierung gemacht ist, 40 bis 200 °C; ohne Angabe die vorsichtigste Tabelle.</translation>
    </message>
    <message>
        <source>most cautious</source>
        <translation>am vorsichtigsten</translation>
    </message>
    <message>
        <source>Air around it</source>
        <translation>Luft darum</translation>
    </message>
    <message>
        <source>-20 to 90 °C; as the table supposes if not stated.</source>
        <translation>-20 bis 90 °C; ohne Angabe wie in der Tabelle.</translation>
    </message>
    <message>
        <source>of the table</source>
        <translation>der Tabelle</translation>
    </message>
    <message>
        <source>Loaded conductors</source>
        <translation>Belastete Leiter</translation>
    </message>
    <message>
        <source>Layers on a drum</source>
        <translation>Lagen auf der Trommel</translation>
    </message>
    <message>
        <source>Layers left on its drum, 0 to 10. Uncoil a cord fully.</source>
        <translation>Lagen, die auf der Trommel bleiben, 0 bis 10. Kabel ganz abwickeln.</translation>
    </message>
    <message>
        <source>Installation</source>
        <translation>Verlegung</translation>
    </message>
    <message>
        <source>Method of installation as the region&apos;s tables name it, such as B2 or C.</source>
        <translation>Verlegeart, wie die Tabellen der Region sie nennen, etwa B2 oder C.</translation>
    </message>
    <message>
        <source>as the first circuit</source>
        <translation>wie der erste Stromkreis</translation>
    </message>
    <message>
        <source>Second element and pump</source>
        <translation>Zweites Heizelement und Pumpe</translation>
    </message>
    <message>
        <source>Second element</source>
        <translation>Zweites Heizelement</translation>
    </message>
    <message>
        <source>Power of a second element, 50 W to 60 kW; it begins as a twin of the first. Left empty: there is none.</source>
        <translation>Leistung eines zweiten Heizelements, 50 W bis 60 kW; anfangs ein Zwilling des ersten. Leer: Es gibt keines.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>Its rated voltage</source>
        <translation>Dessen Nennspannung</translation>
    </message>
    <message>
        <source>As on the name plate, 12 to 690 V.</source>
        <translation>Wie auf dem Typenschild, 12 bis 690 V.</translation>
    </message>
    <message>
        <source>Above the inside of the base, 0 to 1.5 m.</source>
        <translation>Über dem Boden innen, 0 bis 1,5 m.</translation>
    </message>
    <message>
        <source>Wired</source>
        <translation>Geschaltet</translation>
    </message>
    <message>
        <source>How two elements are fed: in parallel or in series on one circuit, or each on a circuit of its own.</source>
        <translation>Wie zwei Heizelemente gespeist werden: parallel oder in Reihe an einem Stromkreis oder jedes an einem eigenen.</translation>
    </message>
    <message>
        <source>Second circuit</source>
        <translation>Zweiter Stromkreis</translation>
    </message>
    <message>
        <source>What feeds the second element, wired on two circuits.</source>
        <translation>Was das zweite Heizelement speist, bei zwei Stromkreisen.</translation>
    </message>
    <message>
        <source>Its voltage</source>
        <translation>Dessen Spannung</translation>
    </message>
    <message>
        <source>Its breaker</source>
        <translation>Dessen Sicherung</translation>
    </message>
    <message>
        <source>Its outlet</source>
        <translation>Dessen Steckdose</translation>
    </message>
    <message>
        <source>What its plug goes into, by the names of the region&apos;s rules.</source>
        <translation>Worein sein Stecker kommt, mit den Namen der Regeln der Region.</translation>
    </message>
    <message>
        <source>Its cable length</source>
        <translation>Länge der Leitung</translation>
    </message>
    <message>
        <source>Its conductor</source>
        <translation>Deren Leiter</translation>
    </message>
    <message>
        <source>Area of the copper, 0.3 to 150 mm², or as 14 AWG.</source>
        <translation>Querschnitt des Kupfers, 0,3 bis 150 mm², oder als 14 AWG.</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>Power of a pump on the first circuit, 1 to 5000 W. Left empty: there is none.</source>
        <translation>Leistung einer Pumpe am ersten Stromkreis, 1 bis 5000 W. Leer: Es gibt keine.</translation>
    </message>
    <message>
        <source>Of the pump, 12 to 690 V; the circuit&apos;s if not stated. Another voltage needs the outlet&apos;s neutral.</source>
        <translation>Der Pumpe, 12 bis 690 V; ohne Angabe die des Stromkreises. Eine andere Spannung braucht den Neutralleiter der Steckdose.</translation>
    </message>
    <message>
        <source>Electrical rules</source>
        <translation>Elektrische Regeln</translation>
    </message>
    <message>
        <source>Region</source>
        <translation>Region</translation>
    </message>
    <message>
        <source>Whose rules judge the circuits. Left empty: all that may apply to each rig&apos;s circuit. Local codes decide.</source>
        <translation>Nach wessen Regeln die Stromkreise beurteilt werden. Leer: alle, die für den Stromkreis jeder Anlage in Frage kommen. Es entscheiden die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>of the circuits</source>
        <translation>der Stromkreise</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation>Fassung</translation>
    </message>
    <message>
        <source>Of the region&apos;s rules: the one that is bundled. A plan that names another is refused instead of judged by this one.</source>
        <translation>Der Regeln der Region: die mitgelieferte. Ein Plan, der eine andere nennt, wird abgewiesen statt nach dieser beurteilt.</translation>
    </message>
    <message>
        <source>the bundled one</source>
        <translation>die mitgelieferte</translation>
    </message>
    <message>
        <source>The room&apos;s air</source>
        <translation>Luft des Raums</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Of the room, 2 to 1000 m³. Left empty: an ordinary kitchen is assumed, and said so.</source>
        <translation>Des Raums, 2 bis 1000 m³. Leer: Eine gewöhnliche Küche ist angenommen und so genannt.</translation>
    </message>
    <message>
        <source>Air changes an hour</source>
        <translation>Luftwechsel je Stunde</translation>
    </message>
    <message>
        <source>Plain number, 0 to 60: how often its air is exchanged with outdoors. Stands instead of an airflow.</source>
        <translation>Bloße Zahl, 0 bis 60: wie oft die Luft mit außen getauscht wird. Steht an Stelle eines Luftstroms.</translation>
    </message>
    <message>
        <source>or airflow</source>
        <translation>oder Luftstrom</translation>
    </message>
    <message>
        <source>Exchanged with outdoors, such as 200 m3/h or 120 ft3/min. Stands instead of air changes.</source>
        <translation>Mit außen getauscht, etwa 200 m3/h oder 120 ft3/min. Steht an Stelle der Luftwechsel.</translation>
    </message>
    <message>
        <source>Outdoor air</source>
        <translation>Außenluft</translation>
    </message>
    <message>
        <source>Temperature outdoors, -20 to 45 °C.</source>
        <translation>Temperatur außen, -20 bis 45 °C.</translation>
    </message>
    <message>
        <source>Its humidity</source>
        <translation>Ihre Feuchte</translation>
    </message>
    <message>
        <source>Relative humidity outdoors, 1 to 100 %.</source>
        <translation>Relative Feuchte außen, 1 bis 100 %.</translation>
    </message>
    <message>
        <source>Hood takes</source>
        <translation>Haube erfasst</translation>
    </message>
    <message>
        <source>Share of the vapour that a hood leads outdoors before it mixes with the room, 0 to 100 %.</source>
        <translation>Anteil des Dampfs, den eine Haube ins Freie führt, ehe er sich mit dem Raum mischt, 0 bis 100 %.</translation>
    </message>
    <message>
        <source>Humidity to hold</source>
        <translation>Feuchte halten</translation>
    </message>
    <message>
        <source>What the airflow is to hold, 20 to 100 %.</source>
        <translation>Was der Luftstrom halten soll, 20 bis 100 %.</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Its U value, 0.3 to 7 W/(m2 K): tells when it gets wet inside. Left empty: not told.</source>
        <translation>Sein U-Wert, 0,3 bis 7 W/(m2 K): sagt, wann es innen nass wird. Leer: nicht gesagt.</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>Number, currency and /kWh, such as 0.28 EUR/kWh or $0.17/kWh. Without it there is no money in the answers. Stands instead of hours or tiers.</source>
        <translation>Zahl, Währung und /kWh, etwa 0.28 EUR/kWh oder $0.17/kWh. Ohne Preis kommt in den Antworten kein Geld vor. Steht an Stelle von Stunden oder Stufen.</translation>
    </message>
    <message>
        <source>by the hour</source>
        <translation>nach der Stunde</translation>
    </message>
    <message>
        <source>Prices by the hour, as the plan&apos;s file has them; changed there.</source>
        <translation>Preise nach der Stunde, wie sie in der Datei des Plans stehen; dort zu ändern.</translation>
    </message>
    <message>
        <source>by the month&apos;s use</source>
        <translation>nach dem Monatsverbrauch</translation>
    </message>
    <message>
        <source>Prices by the month&apos;s use, as the plan&apos;s file has them; changed there.</source>
        <translation>Preise nach dem Monatsverbrauch, wie sie in der Datei des Plans stehen; dort zu ändern.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What the tariff is called, for readers.</source>
        <translation>Wie der Tarif heißt, für Leser.</translation>
    </message>
    <message>
        <source>Day of the brew</source>
        <translation>Brautag</translation>
    </message>
    <message>
        <source>A weekday or a weekend, where prices differ by it.</source>
        <translation>Werktag oder Wochenende, wo Preise davon abhängen.</translation>
    </message>
    <message>
        <source>Used this month</source>
        <translation>Verbrauch im Monat</translation>
    </message>
    <message>
        <source>Energy used before this brew, where prices go by the month&apos;s use.</source>
        <translation>Energie vor diesem Sud, wo Preise vom Monatsverbrauch abhängen.</translation>
    </message>
    <message>
        <source>Rebate</source>
        <translation>Nachlass</translation>
    </message>
    <message>
        <source>Share of the sum that is not paid, -50 to 90 %; below 0 for a tax on top.</source>
        <translation>Anteil der Summe, der nicht bezahlt wird, -50 bis 90 %; unter 0 für eine Steuer obendrauf.</translation>
    </message>
    <message>
        <source>Could begin from</source>
        <translation>Beginn frühestens</translation>
    </message>
    <message>
        <source>Earliest start by the clock, such as 06:00, for the cheapest one.</source>
        <translation>Frühester Beginn als Uhrzeit, etwa 06:00, für den billigsten.</translation>
    </message>
    <message>
        <source>Could begin until</source>
        <translation>Beginn spätestens</translation>
    </message>
    <message>
        <source>Latest start by the clock, such as 22:00, for the cheapest one.</source>
        <translation>Spätester Beginn als Uhrzeit, etwa 22:00, für den billigsten.</translation>
    </message>
    <message>
        <source>Batches a year</source>
        <translation>Sude im Jahr</translation>
    </message>
    <message>
        <source>Plain number, 0 to 1000.</source>
        <translation>Bloße Zahl, 0 bis 1000.</translation>
    </message>
    <message>
        <source>Price of a jacket</source>
        <translation>Preis einer Dämmhülle</translation>
    </message>
    <message>
        <source>Plain number in the price&apos;s currency, for the payback.</source>
        <translation>Bloße Zahl in der Währung des Preises, für die Amortisation.</translation>
    </message>
    <message>
        <source>Price of an element</source>
        <translation>Preis eines Heizelements</translation>
    </message>
    <message>
        <source>CO₂ per kWh</source>
        <translation>CO₂ je kWh</translation>
    </message>
    <message>
        <source>Mass of carbon dioxide that a kilowatt-hour makes, such as 380 g; state its source.</source>
        <translation>Masse an Kohlendioxid je Kilowattstunde, etwa 380 g; nennen Sie die Quelle.</translation>
    </message>
    <message>
        <source>Its source</source>
        <translation>Quelle dazu</translation>
    </message>
    <message>
        <source>Who says so, and for which year.</source>
        <translation>Wer das sagt, und für welches Jahr.</translation>
    </message>
    <message>
        <source>For readers; the program does not look at it.</source>
        <translation>Für Leser; das Programm sieht es nicht an.</translation>
    </message>
    <message>
        <source>What this document is, and of which version.</source>
        <translation>Was dieses Dokument ist und von welcher Version.</translation>
    </message>
    <message>
        <source>What is brewed.</source>
        <translation>Was gebraut wird.</translation>
    </message>
    <message>
        <source>Where it is brewed.</source>
        <translation>Wo gebraut wird.</translation>
    </message>
    <message>
        <source>What energy costs. Left out: no money in the answers.</source>
        <translation>Was Energie kostet. Ohne Angabe kommt in den Antworten kein Geld vor.</translation>
    </message>
    <message>
        <source>A jacket for rigs that have none.</source>
        <translation>Ein Mantel für Anlagen, die keinen haben.</translation>
    </message>
    <message>
        <source>What the sizing questions aim at.</source>
        <translation>Worauf die Fragen nach der Größe zielen.</translation>
    </message>
    <message>
        <source>Which kind of document this is.</source>
        <translation>Welche Art von Dokument dies ist.</translation>
    </message>
    <message>
        <source>Version of the format.</source>
        <translation>Version des Formats.</translation>
    </message>
    <message>
        <source>The grain that is mashed. Left out: no mash, straight to the boil.</source>
        <translation>Das Malz, das gemaischt wird. Ohne Angabe: keine Maische, gleich zum Kochen.</translation>
    </message>
    <message>
        <source>Rests held by a controller, or a mash left alone. Grain needs it.</source>
        <translation>Rasten, die ein Regler hält, oder eine Maische, die allein bleibt. Malz braucht sie.</translation>
    </message>
    <message>
        <source>Temperatures held by a controller, 1 to 12 in their order.</source>
        <translation>Temperaturen, die ein Regler hält, 1 bis 12 in ihrer Reihenfolge.</translation>
    </message>
    <message>
        <source>A mash left alone with the element off: the temperature it starts from, and how long.</source>
        <translation>Eine Maische, die mit ausgeschaltetem Heizelement allein bleibt: die Temperatur am Anfang und wie lange.</translation>
    </message>
    <message>
        <source>From panel to element, one way, 0.1 to 200 m. Left empty: no loss in the cable.</source>
        <translation>Vom Verteiler bis zum Heizelement, einfach, 0,1 bis 200 m. Leer: kein Verlust im Kabel.</translation>
    </message>
    <message>
        <source>Conductors in it that carry current, 2 to 40.</source>
        <translation>Leiter darin, die Strom führen, 2 bis 40.</translation>
    </message>
    <message>
        <source>From panel to element, one way, 0.1 to 200 m.</source>
        <translation>Vom Verteiler zum Heizelement, einfacher Weg, 0,1 bis 200 m.</translation>
    </message>
    <message>
        <source>A file beside the plan with rules of your own, in place of bundled ones.</source>
        <translation>Eine Datei neben dem Plan mit eigenen Regeln anstelle der mitgelieferten.</translation>
    </message>
    <message>
        <source>The room&apos;s size and airflow, for its humidity.</source>
        <translation>Größe und Luftstrom des Raums, für seine Feuchte.</translation>
    </message>
    <message>
        <source>One of its own for every rig.</source>
        <translation>Ein eigener für jede Anlage.</translation>
    </message>
    <message>
        <source>A rig of the catalogue, or a file beside the plan that ends in .json: what is not stated here is as there.</source>
        <translation>Eine Anlage des Katalogs oder eine Datei neben dem Plan, die auf .json endet: Was hier nicht angegeben ist, gilt wie dort.</translation>
    </message>
    <message>
        <source>One line, for readers.</source>
        <translation>Eine Zeile, für Leser.</translation>
    </message>
    <message>
        <source>Where the numbers are from, for readers.</source>
        <translation>Woher die Zahlen stammen, für Leser.</translation>
    </message>
    <message>
        <source>Of a rig in a file of its own.</source>
        <translation>Einer Anlage in einer eigenen Datei.</translation>
    </message>
    <message>
        <source>The kettle.</source>
        <translation>Der Kessel.</translation>
    </message>
    <message>
        <source>The heater.</source>
        <translation>Das Heizelement.</translation>
    </message>
    <message>
        <source>Two to six heaters in place of one.</source>
        <translation>Zwei bis sechs Heizelemente anstelle von einem.</translation>
    </message>
    <message>
        <source>The circuit.</source>
        <translation>Der Stromkreis.</translation>
    </message>
    <message>
        <source>From the panel to the element.</source>
        <translation>Vom Verteiler zum Heizelement.</translation>
    </message>
    <message>
        <source>The circuit of the second element, where there are two.</source>
        <translation>Der Stromkreis des zweiten Heizelements, wo es zwei gibt.</translation>
    </message>
    <message>
        <source>The cable of the second circuit.</source>
        <translation>Das Kabel des zweiten Stromkreises.</translation>
    </message>
    <message>
        <source>A pump on the first circuit.</source>
        <translation>Eine Pumpe am ersten Stromkreis.</translation>
    </message>
    <message>
        <source>The lid. Left out: open all day.</source>
        <translation>Der Deckel. Ohne Angabe: den ganzen Tag offen.</translation>
    </message>
    <message>
        <source>Insulation that the kettle wears.</source>
        <translation>Dämmung, die der Kessel trägt.</translation>
    </message>
    <message>
        <source>A hose outside, used while the mash is held.</source>
        <translation>Ein Schlauch außen, durch den beim Maischen umgewälzt wird.</translation>
    </message>
    <message>
        <source>Share of the mouth that is open, stage by stage.</source>
        <translation>Anteil der Öffnung, der offen ist, Schritt für Schritt.</translation>
    </message>
    <message>
        <source>What the shut lid lets out all round, 0 to 20 % of the mouth; 0 % for a lid that fits.</source>
        <translation>Was der geschlossene Deckel ringsum hinauslässt, 0 bis 20 % der Öffnung; 0 % bei einem Deckel, der dicht anliegt.</translation>
    </message>
    <message>
        <source>Layers around the side, from the metal outwards.</source>
        <translation>Schichten um die Wand, vom Metall nach außen.</translation>
    </message>
    <message>
        <source>Layers below the base, from the metal outwards.</source>
        <translation>Schichten unter dem Boden, vom Metall nach außen.</translation>
    </message>
    <message>
        <source>Layers on the lid, from the metal outwards.</source>
        <translation>Schichten auf dem Deckel, vom Metall nach außen.</translation>
    </message>
    <message>
        <source>Layers around the hose.</source>
        <translation>Schichten um den Schlauch.</translation>
    </message>
    <message>
        <source>A bundled tariff by its name, in place of prices.</source>
        <translation>Ein mitgelieferter Tarif mit seinem Namen, anstelle von Preisen.</translation>
    </message>
    <message>
        <source>Where the prices are from.</source>
        <translation>Woher die Preise stammen.</translation>
    </message>
    <message>
        <source>How sure the prices are.</source>
        <translation>Wie sicher die Preise sind.</translation>
    </message>
    <message>
        <source>Where the tariff is in force.</source>
        <translation>Wo der Tarif gilt.</translation>
    </message>
    <message>
        <source>What the prices are and what is not in them.</source>
        <translation>Was die Preise sind und was nicht darin ist.</translation>
    </message>
    <message>
        <source>Of a tariff in a document of its own.</source>
        <translation>Eines Tarifs in einem eigenen Dokument.</translation>
    </message>
    <message>
        <source>The day in pieces, each with its price.</source>
        <translation>Der Tag in Stücken, jedes mit seinem Preis.</translation>
    </message>
    <message>
        <source>The same for Saturday and Sunday; as on weekdays if not stated.</source>
        <translation>Dasselbe für Samstag und Sonntag; wie an Werktagen, wenn nicht angegeben.</translation>
    </message>
    <message>
        <source>Clock time at which this price begins.</source>
        <translation>Uhrzeit, zu der dieser Preis beginnt.</translation>
    </message>
    <message>
        <source>Clock time at which it ends.</source>
        <translation>Uhrzeit, zu der er endet.</translation>
    </message>
    <message>
        <source>Number, currency and /kWh.</source>
        <translation>Zahl, Währung und /kWh.</translation>
    </message>
    <message>
        <source>Where the price ends, of the month&apos;s use; the last has no end.</source>
        <translation>Wo der Preis endet, nach dem Monatsverbrauch; die letzte Stufe hat kein Ende.</translation>
    </message>
    <message>
        <source>Returns</source>
        <translation>Rücklauf</translation>
    </message>
    <message>
        <source>Where it ends: above the wort it stirs the surface, which then evaporates more.</source>
        <translation>Wo er endet: über der Würze bewegt er die Oberfläche, die dann mehr verdunstet.</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>Through the mash, 0.2 to 100 L/min: a ramp takes longer by what that needs to exchange the wort.</source>
        <translation>Durch die Maische, 0,2 bis 100 L/min: eine Aufheizung dauert um so viel länger, wie der Austausch der Würze braucht.</translation>
    </message>
    <message>
        <source>the mash follows at once</source>
        <translation>die Maische folgt sofort</translation>
    </message>
    <message>
        <source>Heat of the pump</source>
        <translation>Wärme der Pumpe</translation>
    </message>
    <message>
        <source>What of the pump&apos;s power ends in the wort while it runs, 0 to 500 W.</source>
        <translation>Was von der Leistung der Pumpe in der Würze endet, solange sie läuft, 0 bis 500 W.</translation>
    </message>
    <message>
        <source>Dead band</source>
        <translation>Schaltabstand</translation>
    </message>
    <message>
        <source>How far a held rest falls below its temperature before the controller heats again, 0 to 10 K; it is half of that too cold on average.</source>
        <translation>Wie weit eine gehaltene Rast unter ihre Temperatur fällt, bevor der Regler wieder heizt, 0 bis 10 K; im Mittel ist sie um die Hälfte davon zu kalt.</translation>
    </message>
    <message>
        <source>The rigs: 1 to 12, side by side.</source>
        <translation>Die Anlagen: 1 bis 12, nebeneinander.</translation>
    </message>
    <message>
        <source>From a to z, one of its own for every rig: by it the rig is called and looks in pictures. Without it the first that no other rig has.</source>
        <translation>Von a bis z, ein eigener für jede Anlage: Nach ihm heißt die Anlage, und nach ihm sieht sie in Bildern aus. Ohne ihn der erste, den keine andere Anlage hat.</translation>
    </message>
    <message>
        <source>The letter of another rig of this plan: what is not stated here is as there and follows it, and null takes a key out.</source>
        <translation>Der Buchstabe einer anderen Anlage dieses Plans: Was hier nicht angegeben ist, ist wie dort und folgt ihr, und null nimmt einen Schlüssel heraus.</translation>
    </message>
    <message>
        <source>Accepted: %1.</source>
        <translation>Möglich: %1.</translation>
    </message>
    <message>
        <source>For example: %1</source>
        <translation>Zum Beispiel: %1</translation>
    </message>
    <message>
        <source>To the rim. A volume typed here sets diameter and height; the kettle keeps its shape.</source>
        <translation>Bis zum Rand. Ein Volumen, das Sie hier eingeben, bestimmt Durchmesser und Höhe; der Kessel behält seine Form.</translation>
    </message>
    <message>
        <source>Loss factor</source>
        <translation>Verlustfaktor</translation>
    </message>
    <message>
        <source>Plain number on what walls, lid, base and hose lose, from a measured cooling; 0.2 to 5.</source>
        <translation>Reine Zahl auf das, was Wände, Deckel, Boden und Schlauch verlieren, aus einer gemessenen Abkühlung; 0.2 bis 5.</translation>
    </message>
    <message>
        <source>How sure both factors are, and where they are from: own readings.</source>
        <translation>Wie sicher beide Faktoren sind und woher sie stammen: eigene Messwerte.</translation>
    </message>
    <message>
        <source>Losses within</source>
        <translation>Verluste auf</translation>
    </message>
    <message>
        <source>8 times in 10 the loss factor is right to this share, 1 to 100 %.</source>
        <translation>8 Mal von 10 stimmt der Verlustfaktor auf diesen Anteil genau, 1 bis 100 %.</translation>
    </message>
    <message>
        <source>as unsure as unmeasured</source>
        <translation>so unsicher wie ungemessen</translation>
    </message>
    <message>
        <source>Evaporation within</source>
        <translation>Verdunstung auf</translation>
    </message>
    <message>
        <source>8 times in 10 the evaporation factor is right to this share, 1 to 100 %.</source>
        <translation>8 Mal von 10 stimmt der Verdunstungsfaktor auf diesen Anteil genau, 1 bis 100 %.</translation>
    </message>
    <message>
        <source>What it wore when it was read, &quot;&quot; for nothing: with another jacket the loss factor counts for less.</source>
        <translation>Was er beim Ablesen trug, &quot;&quot; für nichts: mit anderer Hülle zählt der Verlustfaktor weniger.</translation>
    </message>
    <message>
        <source>The day of the readings, for readers.</source>
        <translation>Der Tag der Messwerte, für Leser.</translation>
    </message>
    <message>
        <source>Which readings are in it, with the mark by which they are known again.</source>
        <translation>Welche Messwerte darin sind, mit dem Zeichen, an dem sie wiedererkannt werden.</translation>
    </message>
    <message>
        <source>Hot stand</source>
        <translation>Heißhalten</translation>
    </message>
    <message>
        <source>How long it stands after the boil before it is chilled, 0 to 12 h.</source>
        <translation>Wie lange sie nach dem Kochen steht, bevor sie gekühlt wird, 0 bis 12 h.</translation>
    </message>
    <message>
        <source>Pitching at</source>
        <translation>Anstellen bei</translation>
    </message>
    <message>
        <source>Temperature the wort is chilled to, 2 to 50 °C; water brings it to 2 K above its own at best.</source>
        <translation>Temperatur, auf die die Würze gekühlt wird, 2 bis 50 °C; Wasser bringt sie bestenfalls auf 2 K über seine eigene.</translation>
    </message>
    <message>
        <source>Cooling water</source>
        <translation>Kühlwasser</translation>
    </message>
    <message>
        <source>Temperature of the water that chills the wort, 0.5 to 60 °C. Left empty: as the water drawn for brewing.</source>
        <translation>Temperatur des Wassers, das die Würze kühlt, 0,5 bis 60 °C. Leer: wie das Brauwasser.</translation>
    </message>
    <message>
        <source>as the water</source>
        <translation>wie das Wasser</translation>
    </message>
    <message>
        <source>What chills the wort after the boil. Left out: a common coil is supposed where somebody asks.</source>
        <translation>Was die Würze nach dem Kochen kühlt. Weggelassen: Wo jemand fragt, wird eine übliche Spirale unterstellt.</translation>
    </message>
    <message>
        <source>A coil in the kettle, a tube in a hose that the wort runs through once, or air alone.</source>
        <translation>Eine Spirale im Kessel, ein Rohr im Schlauch, durch das die Würze einmal läuft, oder Luft allein.</translation>
    </message>
    <message>
        <source>Of the tube.</source>
        <translation>Des Rohres.</translation>
    </message>
    <message>
        <source>Tube</source>
        <translation>Rohr</translation>
    </message>
    <message>
        <source>Its outer diameter, 4 to 40 mm.</source>
        <translation>Sein Außendurchmesser, 4 bis 40 mm.</translation>
    </message>
    <message>
        <source>Of the tube in the wort, 0.5 to 60 m, and no more than the kettle has room for.</source>
        <translation>Des Rohres in der Würze, 0,5 bis 60 m, und nicht mehr, als in den Kessel passt.</translation>
    </message>
    <message>
        <source>Wort</source>
        <translation>Würze</translation>
    </message>
    <message>
        <source>Whether it is stirred round a coil all the time, or left still.</source>
        <translation>Ob sie um eine Spirale ständig gerührt wird oder ruht.</translation>
    </message>
    <message>
        <source>Water flow</source>
        <translation>Wasserstrom</translation>
    </message>
    <message>
        <source>Through the chiller, 0.2 to 60 L/min.</source>
        <translation>Durch den Kühler, 0,2 bis 60 L/min.</translation>
    </message>
    <message>
        <source>Wort flow</source>
        <translation>Würzestrom</translation>
    </message>
    <message>
        <source>Through a counterflow chiller, 0.2 to 30 L/min.</source>
        <translation>Durch einen Gegenstromkühler, 0,2 bis 30 L/min.</translation>
    </message>
    <message>
        <source>Chiller</source>
        <translation>Kühler</translation>
    </message>
    <message>
        <source>Thickness of its rod</source>
        <translation>Dicke des Heizstabs</translation>
    </message>
    <message>
        <source>Of the heated rod, 3 to 40 mm; with its heated length that tells how hot its skin gets.</source>
        <translation>Des beheizten Stabs, 3 bis 40 mm; mit seiner beheizten Länge sagt das, wie heiß seine Oberfläche wird.</translation>
    </message>
    <message>
        <source>Its heated length</source>
        <translation>Seine beheizte Länge</translation>
    </message>
    <message>
        <source>Of the rod that gives off heat, all its bends along, 50 mm to 20 m.</source>
        <translation>Des Stabs, der Wärme abgibt, alle Windungen entlang, 50 mm bis 20 m.</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>Clock time at which the brew day begins, such as 09:00. Stands instead of what is to be ready.</source>
        <translation>Uhrzeit, zu der der Brautag beginnt, etwa 09:00. Steht anstelle dessen, was fertig sein soll.</translation>
    </message>
    <message>
        <source>What is to be ready by which clock time: each rig then begins at its own. Stands instead of the day&apos;s start.</source>
        <translation>Was bis zu welcher Uhrzeit fertig sein soll: jede Anlage beginnt dann zu ihrer eigenen. Steht anstelle des Tagesbeginns.</translation>
    </message>
    <message>
        <source>or to be ready</source>
        <translation>oder fertig sein soll</translation>
    </message>
    <message>
        <source>What the clock time below is of: strike water hot enough to mash in, the end of the mash, the wort rolling, the end of the boil, or wort chilled for pitching. Each rig begins so much earlier. Stands instead of the day&apos;s start.</source>
        <translation>Wofür die Uhrzeit darunter gilt: Wasser heiß genug zum Einmaischen, Ende der Maische, wallende Würze, Ende des Kochens oder zum Anstellen gekühlte Würze. Jede Anlage beginnt um so viel früher. Steht anstelle des Tagesbeginns.</translation>
    </message>
    <message>
        <source>Ready at</source>
        <translation>Fertig um</translation>
    </message>
    <message>
        <source>Clock time by which it is to be ready, such as 11:00.</source>
        <translation>Uhrzeit, bis zu der es fertig sein soll, etwa 11:00.</translation>
    </message>
    <message>
        <source>What goes into the kettle during the boil: sugar, syrup, fruit, water; 1 to 12.</source>
        <translation>Was während des Kochens in den Kessel kommt: Zucker, Sirup, Obst, Wasser; 1 bis 12.</translation>
    </message>
    <message>
        <source>Addition %1</source>
        <translation>Zugabe %1</translation>
    </message>
    <message>
        <source>What goes into the kettle during the boil, in your own words, up to 80 characters.</source>
        <translation>Was während des Kochens in den Kessel kommt, in eigenen Worten, bis zu 80 Zeichen.</translation>
    </message>
    <message>
        <source>Addition %1, mass</source>
        <translation>Zugabe %1, Masse</translation>
    </message>
    <message>
        <source>As weighed, 1 g to 500 kg; its extract is stated beside it. Water may be stated by volume instead.</source>
        <translation>Wie gewogen, 1 g bis 500 kg; der Extrakt steht daneben. Wasser lässt sich stattdessen als Volumen angeben.</translation>
    </message>
    <message>
        <source>or addition %1 as water</source>
        <translation>oder Zugabe %1 als Wasser</translation>
    </message>
    <message>
        <source>Water that is added, at 20 °C; 0.001 to 500 L. Stands instead of the mass.</source>
        <translation>Zugegebenes Wasser, bei 20 °C; 0,001 bis 500 L. Steht anstelle der Masse.</translation>
    </message>
    <message>
        <source>Addition %1, extract</source>
        <translation>Zugabe %1, Extrakt</translation>
    </message>
    <message>
        <source>Share of the mass that dissolves as sugar, 0 to 100 %; the rest counts as water. Dry sugar 100 %, syrup about 75 to 80 %, fruit about 10 %.</source>
        <translation>Anteil der Masse, der sich als Zucker löst, 0 bis 100 %; der Rest zählt als Wasser. Trockener Zucker 100 %, Sirup etwa 75 bis 80 %, Obst etwa 10 %.</translation>
    </message>
    <message>
        <source>Addition %1, temperature</source>
        <translation>Zugabe %1, Temperatur</translation>
    </message>
    <message>
        <source>0 to 100 °C and no hotter than boiling water here; as warm as the room if not stated.</source>
        <translation>0 bis 100 °C und nicht heißer als hier kochendes Wasser; ohne Angabe so warm wie der Raum.</translation>
    </message>
    <message>
        <source>Addition %1, before the end</source>
        <translation>Zugabe %1, vor dem Ende</translation>
    </message>
    <message>
        <source>How long before the end of the boil it goes in, by the boil&apos;s clock; no longer than the boil.</source>
        <translation>Wie lange vor dem Ende des Kochens sie hineinkommt, nach der Uhr des Kochens; nicht länger als das Kochen.</translation>
    </message>
    <message>
        <source>Additions to the boil</source>
        <translation>Zugaben beim Kochen</translation>
    </message>
    <message>
        <source>Lifted grain</source>
        <translation>Herausgehobenes Malz</translation>
    </message>
    <message>
        <source>Water poured over the lifted grain. Left out: it is not rinsed.</source>
        <translation>Wasser, das über das herausgehobene Malz gegossen wird. Weggelassen: Es wird nicht abgespült.</translation>
    </message>
    <message>
        <source>How long the lifted grain hangs over the kettle. Left out: heating to the boil begins at once.</source>
        <translation>Wie lange das herausgehobene Malz über dem Kessel hängt. Weggelassen: Das Erhitzen zum Kochen beginnt sofort.</translation>
    </message>
    <message>
        <source>Rinsing water</source>
        <translation>Nachgusswasser</translation>
    </message>
    <message>
        <source>Poured over the grain once it is lifted, at 20 °C; 0.1 to 500 L. A wort that is wanted then needs so much less water poured at first.</source>
        <translation>Über das Malz gegossen, sobald es herausgehoben ist, bei 20 °C; 0,1 bis 500 L. Eine gewünschte Würze braucht dann am Anfang um so viel weniger Wasser.</translation>
    </message>
    <message>
        <source>Rinsing water at</source>
        <translation>Nachgusswasser mit</translation>
    </message>
    <message>
        <source>0 to 100 °C, no colder than the water is drawn and no hotter than it boils here.</source>
        <translation>0 bis 100 °C, nicht kälter, als das Wasser gezapft wird, und nicht heißer, als es hier kocht.</translation>
    </message>
    <message>
        <source>Rinsing water heated</source>
        <translation>Nachgusswasser erhitzt</translation>
    </message>
    <message>
        <source>By electricity on the kettle&apos;s own first circuit while the kettle is in use, by electricity on another circuit, or by something else, as gas or the tap.</source>
        <translation>Mit Strom am ersten Stromkreis des Kessels, während dieser in Betrieb ist, mit Strom an einem anderen Stromkreis oder mit etwas anderem, etwa Gas oder aus dem Hahn.</translation>
    </message>
    <message>
        <source>Rinsing water&apos;s heater</source>
        <translation>Heizgerät dafür</translation>
    </message>
    <message>
        <source>Power of what heats it, from the wall, 50 W to 30 kW. On the kettle&apos;s own circuit it is counted beside the element; left empty, it must still be added.</source>
        <translation>Leistung des Heizgeräts aus der Steckdose, 50 W bis 30 kW. Am Stromkreis des Kessels zählt sie neben dem Heizelement; leer gelassen, muss sie noch dazugezählt werden.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Its efficiency</source>
        <translation>Sein Wirkungsgrad</translation>
    </message>
    <message>
        <source>Share of the heater&apos;s electricity that ends in the rinsing water, 30 to 100 %; about 85 % for an element in a covered vessel, 70 % for a pot on a plate.</source>
        <translation>Anteil des Stroms, der im Nachgusswasser ankommt, 30 bis 100 %; etwa 85 % bei einem Heizelement im zugedeckten Gefäß, 70 % bei einem Topf auf der Platte.</translation>
    </message>
    <message>
        <source>Rinse reaches</source>
        <translation>Nachguss erreicht</translation>
    </message>
    <message>
        <source>Share of the wort held by the grain that the rinsing water mixes with, 0 to 100 %. Nobody knows it beforehand; a gravity read before and after tells.</source>
        <translation>Anteil der vom Malz gehaltenen Würze, mit dem sich das Nachgusswasser mischt, 0 bis 100 %. Vorher weiß das niemand; eine Dichte, vorher und nachher gemessen, sagt es.</translation>
    </message>
    <message>
        <source>Grain drains for</source>
        <translation>Malz tropft ab</translation>
    </message>
    <message>
        <source>How long the lifted grain hangs over the open kettle, 1 min to 2 h.</source>
        <translation>Wie lange das herausgehobene Malz über dem offenen Kessel hängt, 1 min bis 2 h.</translation>
    </message>
    <message>
        <source>Element meanwhile</source>
        <translation>Heizelement dabei</translation>
    </message>
    <message>
        <source>Off: the wort cools while the grain drains. On: heating goes on, to just below boiling at most.</source>
        <translation>Aus: Die Würze kühlt ab, während das Malz abtropft. An: Es wird weiter erhitzt, höchstens bis knapp unter das Kochen.</translation>
    </message>
</context>
<context>
    <name>Prior</name>
    <message>
        <source>films are good to 13 %, insulation and lid to 20 %, the base to 25 %; taps, probes and rims are left out</source>
        <translation>Filme an Wänden sind auf 13 % bekannt, Dämmung und Deckel auf 20 %, der Boden auf 25 %; Hähne, Fühler und Ränder fehlen</translation>
    </message>
    <message>
        <source>nobody stated how the kettle looks, and dull metal loses up to 1.9 times as much as bright; films, lid and base are good to 13 to 25 % besides</source>
        <translation>niemand hat angegeben, wie der Kessel aussieht, und mattes Metall verliert bis zu 1,9-mal so viel wie blankes; dazu sind Filme, Deckel und Boden auf 13 bis 25 % bekannt</translation>
    </message>
    <message>
        <source>the law of the open surface is off by 18 % in the mean over 11 series; in mugs and pans it gives a quarter too much</source>
        <translation>das Gesetz der offenen Oberfläche liegt im Mittel über 11 Messreihen um 18 % daneben; bei Bechern und Töpfen gibt es ein Viertel zu viel</translation>
    </message>
    <message>
        <source>the law of the open surface is off by 18 % in the mean over 11 series</source>
        <translation>das Gesetz der offenen Oberfläche liegt im Mittel über 11 Messreihen um 18 % daneben</translation>
    </message>
    <message>
        <source>a lid does not lie on its rim twice in the same way</source>
        <translation>kein Deckel liegt zweimal gleich auf seinem Rand</translation>
    </message>
    <message>
        <source>nobody stated how the lid fits; from 1 to 5 % of the mouth may be open round a shut one</source>
        <translation>niemand hat angegeben, wie der Deckel schließt; rund um einen geschlossenen können 1 bis 5 % der Öffnung offen sein</translation>
    </message>
    <message>
        <source>marks in a kettle are good to a quarter or half a litre</source>
        <translation>Marken in einem Kessel stimmen auf einen viertel oder halben Liter</translation>
    </message>
    <message>
        <source>an element may have 10 % less to 5 % more than its plate says, and the voltage at the socket 5 % either way</source>
        <translation>ein Heizelement darf 10 % weniger bis 5 % mehr haben, als sein Schild sagt, und die Spannung an der Steckdose 5 % mehr oder weniger</translation>
    </message>
    <message>
        <source>a room is read to about a degree</source>
        <translation>ein Raum wird auf etwa ein Grad genau abgelesen</translation>
    </message>
    <message>
        <source>tap water is read to about a degree, if at all</source>
        <translation>Leitungswasser wird auf etwa ein Grad genau gemessen, wenn überhaupt</translation>
    </message>
    <message>
        <source>grain keeps a fifth more or less wort, by its crush and by how long it drips</source>
        <translation>Malz hält ein Fünftel mehr oder weniger Würze zurück, je nach Schrotung und Abtropfzeit</translation>
    </message>
    <message>
        <source>your own readings (%1) told its losses</source>
        <translation>seine Verluste sind aus Ihren eigenen Messwerten (%1) bekannt</translation>
    </message>
    <message>
        <source>your own readings (%1) told its losses, but it wore another jacket then</source>
        <translation>seine Verluste sind aus Ihren eigenen Messwerten (%1) bekannt, doch trug er da eine andere Hülle</translation>
    </message>
    <message>
        <source>your own readings (%1) told its evaporation</source>
        <translation>seine Verdunstung ist aus Ihren eigenen Messwerten (%1) bekannt</translation>
    </message>
</context>
<context>
    <name>Problem</name>
    <message>
        <source>null says nothing</source>
        <translation>null sagt nichts</translation>
    </message>
    <message>
        <source>true is no answer</source>
        <translation>true ist keine Antwort</translation>
    </message>
    <message>
        <source>false is no answer</source>
        <translation>false ist keine Antwort</translation>
    </message>
    <message>
        <source>a list stands here</source>
        <translation>hier steht eine Liste</translation>
    </message>
    <message>
        <source>an object stands here</source>
        <translation>hier steht ein Objekt</translation>
    </message>
    <message>
        <source>%1 is text</source>
        <translation>%1 ist Text</translation>
    </message>
    <message>
        <source>%1 is a number</source>
        <translation>%1 ist eine Zahl</translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>%1 is not a whole number</source>
        <translation>%1 ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>%1 is not known here and has no effect</source>
        <translation>%1 ist hier nicht bekannt und bewirkt nichts</translation>
    </message>
    <message>
        <source>%1 is not known here</source>
        <translation>%1 ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>%1 is too long with %2 characters</source>
        <translation>%1 ist mit %2 Zeichen zu lang</translation>
    </message>
    <message>
        <source>%1 holds a control character</source>
        <translation>%1 enthält ein Steuerzeichen</translation>
    </message>
    <message>
        <source>this list has %1 entry</source>
        <translation>diese Liste hat %1 Eintrag</translation>
    </message>
    <message>
        <source>this list has %1 entries</source>
        <translation>diese Liste hat %1 Einträge</translation>
    </message>
    <message>
        <source>%1 stands here more than once</source>
        <translation>%1 steht hier mehrmals</translation>
    </message>
    <message>
        <source>text in quotation marks is needed</source>
        <translation>gebraucht wird Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>an object is needed</source>
        <translation>gebraucht wird ein Objekt</translation>
    </message>
    <message>
        <source>a list is needed</source>
        <translation>gebraucht wird eine Liste</translation>
    </message>
    <message>
        <source>a number from %1 is needed</source>
        <translation>gebraucht wird eine Zahl: %1</translation>
    </message>
    <message>
        <source>a whole number from %1 is needed</source>
        <translation>gebraucht wird eine ganze Zahl: %1</translation>
    </message>
    <message>
        <source>a number without quotation marks is needed</source>
        <translation>gebraucht wird eine Zahl ohne Anführungszeichen</translation>
    </message>
    <message>
        <source>true or false without quotation marks is needed</source>
        <translation>gebraucht wird true oder false ohne Anführungszeichen</translation>
    </message>
    <message>
        <source>%1 as text is needed</source>
        <translation>gebraucht wird %1 als Text</translation>
    </message>
    <message>
        <source>%1 is needed</source>
        <translation>gebraucht wird %1</translation>
    </message>
    <message>
        <source>accepted is %1</source>
        <translation>zulässig ist %1</translation>
    </message>
    <message>
        <source>%1 are accepted</source>
        <translation>zulässig sind %1</translation>
    </message>
    <message>
        <source>plain text in one line is accepted</source>
        <translation>zulässig ist einfacher Text in einer Zeile</translation>
    </message>
    <message>
        <source>%1 is accepted</source>
        <translation>zulässig ist %1</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>eines von %1</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>%1 or less</source>
        <translation>%1 oder weniger</translation>
    </message>
    <message>
        <source>perhaps %1 was meant</source>
        <translation>vielleicht war %1 gemeint</translation>
    </message>
    <message>
        <source>write e.g. %1</source>
        <translation>schreiben Sie z. B. %1</translation>
    </message>
    <message>
        <source>write it with one of %1</source>
        <translation>schreiben Sie eine Einheit dazu, etwa %1</translation>
    </message>
    <message>
        <source>write it with %1</source>
        <translation>schreiben Sie es mit %1</translation>
    </message>
    <message>
        <source>keep one of them</source>
        <translation>behalten Sie nur eines davon</translation>
    </message>
    <message>
        <source>keep one</source>
        <translation>behalten Sie nur eines</translation>
    </message>
    <message>
        <source>keep to one</source>
        <translation>bleiben Sie bei einer</translation>
    </message>
    <message>
        <source>keep fewer</source>
        <translation>behalten Sie weniger</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>ein Anteil</translation>
    </message>
    <message>
        <source>a share per time</source>
        <translation>ein Anteil je Zeit</translation>
    </message>
    <message>
        <source>a power</source>
        <translation>eine Leistung</translation>
    </message>
    <message>
        <source>an energy</source>
        <translation>eine Energie</translation>
    </message>
    <message>
        <source>a volume</source>
        <translation>ein Volumen</translation>
    </message>
    <message>
        <source>a mass</source>
        <translation>eine Masse</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>eine Temperatur</translation>
    </message>
    <message>
        <source>a temperature difference</source>
        <translation>ein Temperaturunterschied</translation>
    </message>
    <message>
        <source>a temperature change per time</source>
        <translation>eine Temperaturänderung je Zeit</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>eine Zeit</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>an area</source>
        <translation>eine Fläche</translation>
    </message>
    <message>
        <source>a speed</source>
        <translation>eine Geschwindigkeit</translation>
    </message>
    <message>
        <source>a voltage</source>
        <translation>eine Spannung</translation>
    </message>
    <message>
        <source>a current</source>
        <translation>ein Strom</translation>
    </message>
    <message>
        <source>an electrical resistance</source>
        <translation>ein elektrischer Widerstand</translation>
    </message>
    <message>
        <source>an electrical resistance per length</source>
        <translation>ein elektrischer Widerstand je Länge</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>ein Druck</translation>
    </message>
    <message>
        <source>a thermal resistance of an area</source>
        <translation>ein Wärmewiderstand einer Fläche</translation>
    </message>
    <message>
        <source>a thermal conductivity</source>
        <translation>eine Wärmeleitfähigkeit</translation>
    </message>
    <message>
        <source>a heat transfer coefficient</source>
        <translation>ein Wärmeübergangskoeffizient</translation>
    </message>
    <message>
        <source>a heat loss per degree</source>
        <translation>ein Wärmeverlust je Grad</translation>
    </message>
    <message>
        <source>a heat capacity</source>
        <translation>eine Wärmekapazität</translation>
    </message>
    <message>
        <source>a specific heat</source>
        <translation>eine spezifische Wärme</translation>
    </message>
    <message>
        <source>an energy per mass</source>
        <translation>eine Energie je Masse</translation>
    </message>
    <message>
        <source>a power per area</source>
        <translation>eine Leistung je Fläche</translation>
    </message>
    <message>
        <source>a density</source>
        <translation>eine Dichte</translation>
    </message>
    <message>
        <source>a volume per mass</source>
        <translation>ein Volumen je Masse</translation>
    </message>
    <message>
        <source>a mass per time</source>
        <translation>eine Masse je Zeit</translation>
    </message>
    <message>
        <source>a mass per area and time</source>
        <translation>eine Masse je Fläche und Zeit</translation>
    </message>
    <message>
        <source>a volume per time</source>
        <translation>ein Volumen je Zeit</translation>
    </message>
    <message>
        <source>%1 does not start with a number</source>
        <translation>%1 beginnt nicht mit einer Zahl</translation>
    </message>
    <message>
        <source>%1 has more than one decimal sign</source>
        <translation>%1 hat mehr als ein Dezimalzeichen</translation>
    </message>
    <message>
        <source>write it without grouping the digits</source>
        <translation>schreiben Sie die Ziffern ohne Gruppen</translation>
    </message>
    <message>
        <source>%1 can be read as %2 or as %3</source>
        <translation>%1 lässt sich als %2 oder als %3 lesen</translation>
    </message>
    <message>
        <source>write one of these</source>
        <translation>schreiben Sie eines von beiden</translation>
    </message>
    <message>
        <source>%1 is too large or too small a number</source>
        <translation>%1 ist eine zu große oder zu kleine Zahl</translation>
    </message>
    <message>
        <source>%1 has its digits in groups</source>
        <translation>%1 hat seine Ziffern in Gruppen</translation>
    </message>
    <message>
        <source>write them without spaces</source>
        <translation>schreiben Sie sie ohne Leerzeichen</translation>
    </message>
    <message>
        <source>%1 has a fraction without a value</source>
        <translation>%1 hat einen Bruch ohne Wert</translation>
    </message>
    <message>
        <source>%1 lies below absolute zero</source>
        <translation>%1 liegt unter dem absoluten Nullpunkt</translation>
    </message>
    <message>
        <source>%1 is not between 0 and 1</source>
        <translation>%1 liegt nicht zwischen 0 und 1</translation>
    </message>
    <message>
        <source>write %1 for percent</source>
        <translation>schreiben Sie %1 für Prozent</translation>
    </message>
    <message>
        <source>%1 is no wire gauge</source>
        <translation>%1 ist keine Drahtstärke</translation>
    </message>
    <message>
        <source>they run from &quot;4/0 AWG&quot; to &quot;40 AWG&quot;</source>
        <translation>sie gehen von &quot;4/0 AWG&quot; bis &quot;40 AWG&quot;</translation>
    </message>
    <message>
        <source>%1 has no unit</source>
        <translation>%1 hat keine Einheit</translation>
    </message>
    <message>
        <source>%1 has a unit that does not measure %2</source>
        <translation>%1 hat eine Einheit, die nicht passt: gesucht ist %2</translation>
    </message>
    <message>
        <source>minutes are &quot;min&quot;</source>
        <translation>Minuten sind &quot;min&quot;</translation>
    </message>
    <message>
        <source>fluid ounces are &quot;fl oz&quot;</source>
        <translation>Flüssigunzen sind &quot;fl oz&quot;</translation>
    </message>
    <message>
        <source>%1 has more after the number</source>
        <translation>bei %1 steht nach der Zahl noch mehr</translation>
    </message>
    <message>
        <source>&quot;RSI&quot; already means m²·K/W</source>
        <translation>&quot;RSI&quot; heißt schon m²·K/W</translation>
    </message>
    <message>
        <source>&quot;R&quot; already means ft²·h·°F/Btu</source>
        <translation>&quot;R&quot; heißt schon ft²·h·°F/Btu</translation>
    </message>
    <message>
        <source>%1 has a broken number before its last unit</source>
        <translation>%1 hat vor der letzten Einheit eine gebrochene Zahl</translation>
    </message>
    <message>
        <source>write one number and one unit</source>
        <translation>schreiben Sie eine Zahl und eine Einheit</translation>
    </message>
    <message>
        <source>%1 joins units that are not written one after another</source>
        <translation>%1 verbindet Einheiten, die man nicht hintereinander schreibt</translation>
    </message>
    <message>
        <source>%1 has a part that is not smaller than the unit before it</source>
        <translation>%1 hat einen Teil, der nicht kleiner als die Einheit davor ist</translation>
    </message>
    <message>
        <source>%1 is too long for a quantity</source>
        <translation>%1 ist für eine Größe zu lang</translation>
    </message>
    <message>
        <source>%1 is empty</source>
        <translation>%1 ist leer</translation>
    </message>
    <message>
        <source>%1 holds a character that does not belong in a quantity</source>
        <translation>%1 enthält ein Zeichen, das in keine Größe gehört</translation>
    </message>
    <message>
        <source>%1 has more after its unit</source>
        <translation>bei %1 steht nach der Einheit noch mehr</translation>
    </message>
    <message>
        <source>%1 ends with a number without a unit</source>
        <translation>%1 endet mit einer Zahl ohne Einheit</translation>
    </message>
    <message>
        <source>%1 has a &quot;:&quot;</source>
        <translation>%1 hat ein &quot;:&quot;</translation>
    </message>
    <message>
        <source>write times like &quot;1 h 30 min&quot;</source>
        <translation>schreiben Sie Zeiten wie &quot;1 h 30 min&quot;</translation>
    </message>
    <message>
        <source>%1 has something else than a unit after the number</source>
        <translation>bei %1 steht nach der Zahl etwas anderes als eine Einheit</translation>
    </message>
    <message>
        <source>%1 has a number after %2</source>
        <translation>%1 hat nach %2 eine Zahl</translation>
    </message>
    <message>
        <source>%1 has %2 where a unit should stand</source>
        <translation>%1 hat %2, wo eine Einheit stehen sollte</translation>
    </message>
    <message>
        <source>%1 has a &quot;/&quot; within brackets</source>
        <translation>%1 hat ein &quot;/&quot; in Klammern</translation>
    </message>
    <message>
        <source>write one &quot;/&quot; and one pair of brackets</source>
        <translation>schreiben Sie ein &quot;/&quot; und ein Paar Klammern</translation>
    </message>
    <message>
        <source>%1 has brackets within brackets</source>
        <translation>%1 hat Klammern in Klammern</translation>
    </message>
    <message>
        <source>%1 has a &quot;)&quot; without its &quot;(&quot;</source>
        <translation>%1 hat ein &quot;)&quot; ohne sein &quot;(&quot;</translation>
    </message>
    <message>
        <source>%1 has a &quot;(&quot; without its &quot;)&quot;</source>
        <translation>%1 hat ein &quot;(&quot; ohne sein &quot;)&quot;</translation>
    </message>
    <message>
        <source>%1 has brackets without a unit</source>
        <translation>%1 hat Klammern ohne Einheit</translation>
    </message>
    <message>
        <source>%1 has nothing after the last %2</source>
        <translation>%1 hat nichts nach dem letzten %2</translation>
    </message>
    <message>
        <source>%1 can be read in two ways</source>
        <translation>%1 lässt sich auf zwei Arten lesen</translation>
    </message>
    <message>
        <source>put all that stands below the &quot;/&quot; in brackets</source>
        <translation>setzen Sie alles, was unter dem &quot;/&quot; steht, in Klammern</translation>
    </message>
    <message>
        <source>%1 has too many units</source>
        <translation>%1 hat zu viele Einheiten</translation>
    </message>
    <message>
        <source>%1 has a &quot;^&quot; without a power from 1 to 4</source>
        <translation>%1 hat ein &quot;^&quot; ohne Potenz von 1 bis 4</translation>
    </message>
    <message>
        <source>%1 has the unit %2, where capitals change the size</source>
        <translation>%1 hat die Einheit %2, bei der Großbuchstaben die Größe ändern</translation>
    </message>
    <message>
        <source>%1 has the unit %2, which may be two units</source>
        <translation>%1 hat die Einheit %2, die zwei Einheiten sein kann</translation>
    </message>
    <message>
        <source>write %1 with a space, in brackets if it stands below a &quot;/&quot;</source>
        <translation>schreiben Sie %1 mit Leerzeichen, und in Klammern, wenn es unter einem &quot;/&quot; steht</translation>
    </message>
    <message>
        <source>%1 has the unit %2, which is not known</source>
        <translation>%1 hat die Einheit %2, die nicht bekannt ist</translation>
    </message>
    <message>
        <source>%1 has %2, which may be 907, 1000 or 1016 kg</source>
        <translation>%1 hat %2, das 907, 1000 oder 1016 kg sein kann</translation>
    </message>
    <message>
        <source>%1 has %2, which has many sizes</source>
        <translation>%1 hat %2, das es in vielen Größen gibt</translation>
    </message>
    <message>
        <source>%1 has %2, which may be kelvin or a thousand</source>
        <translation>%1 hat %2, das Kelvin oder Tausend sein kann</translation>
    </message>
    <message>
        <source>write &quot;K&quot; for kelvin, or the number in full</source>
        <translation>schreiben Sie &quot;K&quot; für Kelvin oder die ganze Zahl</translation>
    </message>
    <message>
        <source>%1 has %2, which does not say whose degrees</source>
        <translation>%1 hat %2, das nicht sagt, wessen Grade</translation>
    </message>
    <message>
        <source>%1 has %2, which may be gram or grain</source>
        <translation>%1 hat %2, das Gramm oder Gran sein kann</translation>
    </message>
    <message>
        <source>%1 has %2, which is metric horsepower</source>
        <translation>%1 hat %2, das die metrische Pferdestärke ist</translation>
    </message>
    <message>
        <source>%1 has %2, which is apparent power</source>
        <translation>%1 hat %2, das Scheinleistung ist</translation>
    </message>
    <message>
        <source>%1 has %2, which is a pressure above that of the air</source>
        <translation>%1 hat %2, das ein Druck über dem der Luft ist</translation>
    </message>
    <message>
        <source>write the whole pressure in psi</source>
        <translation>schreiben Sie den ganzen Druck in psi</translation>
    </message>
    <message>
        <source>this plan is of version %1</source>
        <translation>dieser Plan hat die Version %1</translation>
    </message>
    <message>
        <source>this program understands version %1</source>
        <translation>dieses Programm versteht die Version %1</translation>
    </message>
    <message>
        <source>two rigs are called %1</source>
        <translation>zwei Anlagen heißen %1</translation>
    </message>
    <message>
        <source>give each a name of its own</source>
        <translation>geben Sie jeder einen eigenen Namen</translation>
    </message>
    <message>
        <source>a rig needs a name that can be seen</source>
        <translation>eine Anlage braucht einen Namen, den man sieht</translation>
    </message>
    <message>
        <source>it holds no list of rigs</source>
        <translation>es enthält keine Liste von Anlagen</translation>
    </message>
    <message>
        <source>an extract of %1 and a moisture of %2 are more than the whole grain</source>
        <translation>ein Extrakt von %1 und eine Feuchte von %2 sind mehr als das ganze Malz</translation>
    </message>
    <message>
        <source>together they may be 100 %, usual are 72 % and 4.5 %</source>
        <translation>zusammen dürfen sie 100 % sein, üblich sind 72 % und 4,5 %</translation>
    </message>
    <message>
        <source>%1 does not rise above the rest before, at %2</source>
        <translation>%1 liegt nicht über der Rast davor mit %2</translation>
    </message>
    <message>
        <source>a kettle can only cool by waiting</source>
        <translation>ein Kessel kühlt nur, wenn man wartet</translation>
    </message>
    <message>
        <source>the mash has both held rests and an unplugged one</source>
        <translation>die Maische hat sowohl gehaltene Rasten als auch eine ohne Strom</translation>
    </message>
    <message>
        <source>the mash has neither &quot;rests&quot; nor &quot;unplugged&quot;</source>
        <translation>die Maische hat weder &quot;rests&quot; noch &quot;unplugged&quot;</translation>
    </message>
    <message>
        <source>both &quot;wort&quot; and &quot;water&quot; are stated</source>
        <translation>&quot;wort&quot; und &quot;water&quot; sind beide angegeben</translation>
    </message>
    <message>
        <source>keep one of them, the other follows</source>
        <translation>behalten Sie nur eines davon, das andere folgt daraus</translation>
    </message>
    <message>
        <source>neither &quot;wort&quot;, the cold wort wanted after the boil, nor &quot;water&quot;, the cold water poured in, is stated</source>
        <translation>weder &quot;wort&quot;, die nach dem Kochen gewünschte kalte Würze, noch &quot;water&quot;, das eingefüllte kalte Wasser, ist angegeben</translation>
    </message>
    <message>
        <source>write one</source>
        <translation>schreiben Sie eines davon</translation>
    </message>
    <message>
        <source>%1 of water are too little: the grain keeps %2</source>
        <translation>%1 Wasser sind zu wenig: das Malz behält %2</translation>
    </message>
    <message>
        <source>pour at least a quarter more than that</source>
        <translation>nehmen Sie mindestens ein Viertel mehr als das</translation>
    </message>
    <message>
        <source>%1 of grain in about %2 of water give a wort of %3 extract</source>
        <translation>%1 Malz in etwa %2 Wasser geben eine Würze von %3 Extrakt</translation>
    </message>
    <message>
        <source>up to %1 are accepted, usual are 10 to 18 %</source>
        <translation>zulässig sind bis zu %1, üblich sind 10 bis 18 %</translation>
    </message>
    <message>
        <source>%1 of water to grain is no mash</source>
        <translation>%1 Wasser zu Malz sind keine Maische</translation>
    </message>
    <message>
        <source>%1 of water to grain is too thick to stir</source>
        <translation>%1 Wasser zu Malz sind zu dick zum Rühren</translation>
    </message>
    <message>
        <source>there is no grain, so there is no mash</source>
        <translation>ohne Malz gibt es keine Maische</translation>
    </message>
    <message>
        <source>add &quot;grain&quot; or leave this out</source>
        <translation>geben Sie &quot;grain&quot; an oder lassen Sie dies weg</translation>
    </message>
    <message>
        <source>both an altitude and a pressure are stated</source>
        <translation>eine Höhe und ein Druck sind beide angegeben</translation>
    </message>
    <message>
        <source>neither an altitude nor a pressure is stated</source>
        <translation>weder eine Höhe noch ein Druck ist angegeben</translation>
    </message>
    <message>
        <source>both an airflow and air changes are stated</source>
        <translation>ein Luftstrom und ein Luftwechsel sind beide angegeben</translation>
    </message>
    <message>
        <source>an edition of rules needs a &quot;region&quot;</source>
        <translation>eine Fassung von Regeln braucht eine &quot;region&quot;</translation>
    </message>
    <message>
        <source>%1 is not the region of the rules file, %2</source>
        <translation>%1 ist nicht die Region der Regeldatei, %2</translation>
    </message>
    <message>
        <source>%1 is no region with electrical rules here</source>
        <translation>für %1 gibt es hier keine elektrischen Regeln</translation>
    </message>
    <message>
        <source>%1 of %2 is not here</source>
        <translation>%1 von %2 ist nicht hier</translation>
    </message>
    <message>
        <source>there is %1</source>
        <translation>es gibt %1</translation>
    </message>
    <message>
        <source>%1 leads out of the plan&apos;s folder</source>
        <translation>%1 führt aus dem Ordner des Plans hinaus</translation>
    </message>
    <message>
        <source>write a path within it</source>
        <translation>schreiben Sie einen Pfad darin</translation>
    </message>
    <message>
        <source>%1 is no price of energy</source>
        <translation>%1 ist kein Preis für Energie</translation>
    </message>
    <message>
        <source>write number, currency and &quot;/kWh&quot;</source>
        <translation>schreiben Sie Zahl, Währung und &quot;/kWh&quot;</translation>
    </message>
    <message>
        <source>this price is in %1, those before in %2</source>
        <translation>dieser Preis ist in %1, die davor in %2</translation>
    </message>
    <message>
        <source>a window from %1 to %2 has no length</source>
        <translation>ein Fenster von %1 bis %2 hat keine Länge</translation>
    </message>
    <message>
        <source>for a whole day write from &quot;00:00&quot; to &quot;24:00&quot;</source>
        <translation>schreiben Sie für einen ganzen Tag von &quot;00:00&quot; bis &quot;24:00&quot;</translation>
    </message>
    <message>
        <source>no price is stated from %1 to %2</source>
        <translation>von %1 bis %2 ist kein Preis angegeben</translation>
    </message>
    <message>
        <source>cover the whole day</source>
        <translation>decken Sie den ganzen Tag ab</translation>
    </message>
    <message>
        <source>two prices are stated from %1 to %2</source>
        <translation>von %1 bis %2 sind zwei Preise angegeben</translation>
    </message>
    <message>
        <source>nothing is stated for use beyond this</source>
        <translation>für einen Verbrauch darüber ist nichts angegeben</translation>
    </message>
    <message>
        <source>leave &quot;up_to&quot; of the last tier out</source>
        <translation>lassen Sie &quot;up_to&quot; der letzten Stufe weg</translation>
    </message>
    <message>
        <source>this tier ends at %1, where the one before has ended already</source>
        <translation>diese Stufe endet bei %1, wo die davor schon geendet hat</translation>
    </message>
    <message>
        <source>%1 is no bundled tariff</source>
        <translation>%1 ist kein mitgelieferter Tarif</translation>
    </message>
    <message>
        <source>a tariff has one &quot;price&quot;, or prices by &quot;times&quot;, or by &quot;tiers&quot;, or those it is &quot;from&quot;</source>
        <translation>ein Tarif hat einen Preis (&quot;price&quot;) oder Preise nach &quot;times&quot; oder nach &quot;tiers&quot; oder die, von denen er kommt (&quot;from&quot;)</translation>
    </message>
    <message>
        <source>%1 is no time of day</source>
        <translation>%1 ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>write hours and minutes from 00:00 to 23:59</source>
        <translation>schreiben Sie Stunden und Minuten von 00:00 bis 23:59</translation>
    </message>
    <message>
        <source>no source is stated for this figure</source>
        <translation>für diese Zahl ist keine Quelle angegeben</translation>
    </message>
    <message>
        <source>write &quot;co2_source&quot;</source>
        <translation>schreiben Sie &quot;co2_source&quot;</translation>
    </message>
    <message>
        <source>%1 is no date</source>
        <translation>%1 ist kein Datum</translation>
    </message>
    <message>
        <source>write year and month, e.g. &quot;2026-01&quot;, or a day</source>
        <translation>schreiben Sie Jahr und Monat, z. B. &quot;2026-01&quot;, oder einen Tag</translation>
    </message>
    <message>
        <source>a window for the start has both ends</source>
        <translation>ein Fenster für den Beginn hat beide Enden</translation>
    </message>
    <message>
        <source>write &quot;brew_from&quot; and &quot;brew_until&quot;</source>
        <translation>schreiben Sie &quot;brew_from&quot; und &quot;brew_until&quot;</translation>
    </message>
    <message>
        <source>%1 is no rig of the catalogue</source>
        <translation>%1 ist keine Anlage des Katalogs</translation>
    </message>
    <message>
        <source>write %1, or the relative path of a file that ends in .json</source>
        <translation>schreiben Sie %1 oder den relativen Pfad einer Datei, die auf .json endet</translation>
    </message>
    <message>
        <source>%1 is not there</source>
        <translation>%1 ist nicht da</translation>
    </message>
    <message>
        <source>looked for %1</source>
        <translation>gesucht wurde %1</translation>
    </message>
    <message>
        <source>%1 is from itself, directly or over other files</source>
        <translation>%1 kommt von sich selbst, unmittelbar oder über andere Dateien</translation>
    </message>
    <message>
        <source>%1 is not a file</source>
        <translation>%1 ist keine Datei</translation>
    </message>
    <message>
        <source>more than %1 rigs are from one another</source>
        <translation>mehr als %1 Anlagen kommen voneinander</translation>
    </message>
    <message>
        <source>this cable would take %1 of the power as heat</source>
        <translation>dieses Kabel nähme %1 der Leistung als Wärme</translation>
    </message>
    <message>
        <source>usual is below 5 %</source>
        <translation>üblich sind unter 5 %</translation>
    </message>
    <message>
        <source>the element&apos;s top at %1 is not below the vessel&apos;s rim at %2</source>
        <translation>die Oberkante des Heizelements bei %1 liegt nicht unter dem Rand des Gefäßes bei %2</translation>
    </message>
    <message>
        <source>this jacket covers a lid, but the rig has none</source>
        <translation>dieser Mantel bedeckt einen Deckel, aber die Anlage hat keinen</translation>
    </message>
    <message>
        <source>add &quot;lid&quot; to the rig or leave this out</source>
        <translation>geben Sie der Anlage einen Deckel (&quot;lid&quot;) oder lassen Sie dies weg</translation>
    </message>
    <message>
        <source>no element hangs on it</source>
        <translation>kein Heizelement hängt daran</translation>
    </message>
    <message>
        <source>write &quot;wired&quot;: &quot;two circuits&quot;</source>
        <translation>schreiben Sie &quot;wired&quot;: &quot;two circuits&quot;</translation>
    </message>
    <message>
        <source>an element of %1 on %2 would give %3 times its rated power and surface load. Supplies rise to 110 % of their nominal voltage and elements are made for that; this is above it all the time. Use one rated for %4</source>
        <translation>ein Heizelement für %1 an %2 gäbe das %3-fache seiner Nennleistung und Oberflächenlast. Netze steigen bis auf 110 % ihrer Nennspannung, und Heizelemente sind dafür gemacht; dies liegt die ganze Zeit darüber. Nehmen Sie eines für %4</translation>
    </message>
    <message>
        <source>an element of %1 on %2 gives %3 times its rated power</source>
        <translation>ein Heizelement für %1 an %2 gibt das %3-fache seiner Nennleistung</translation>
    </message>
    <message>
        <source>that is within what supplies vary by, and more current than its name plate says</source>
        <translation>das liegt in dem Bereich, in dem Netze schwanken, und ist mehr Strom, als sein Typenschild sagt</translation>
    </message>
    <message>
        <source>both a finish and an emissivity are stated</source>
        <translation>ein Aussehen und ein Emissionsgrad sind beide angegeben</translation>
    </message>
    <message>
        <source>how does the %1 look? Write %2, or an &quot;emissivity&quot; from 0.01 to 1</source>
        <translation>wie sieht der Werkstoff (%1) aus? Schreiben Sie %2 oder einen Emissionsgrad (&quot;emissivity&quot;) von 0,01 bis 1</translation>
    </message>
    <message>
        <source>%1 is no known look of %2</source>
        <translation>%1 ist kein bekanntes Aussehen von: %2</translation>
    </message>
    <message>
        <source>leave it out, or write an &quot;emissivity&quot;</source>
        <translation>lassen Sie es weg oder schreiben Sie einen Emissionsgrad (&quot;emissivity&quot;)</translation>
    </message>
    <message>
        <source>write %1, or an &quot;emissivity&quot; from 0.01 to 1</source>
        <translation>schreiben Sie %1 oder einen Emissionsgrad (&quot;emissivity&quot;) von 0,01 bis 1</translation>
    </message>
    <message>
        <source>%1 is no known material for a vessel</source>
        <translation>%1 ist kein bekannter Werkstoff für ein Gefäß</translation>
    </message>
    <message>
        <source>%1 is no known material for a lid</source>
        <translation>%1 ist kein bekannter Werkstoff für einen Deckel</translation>
    </message>
    <message>
        <source>%1 is no known material for a jacket</source>
        <translation>%1 ist kein bekannter Werkstoff für einen Mantel</translation>
    </message>
    <message>
        <source>%1 is no known material for a stand</source>
        <translation>%1 ist kein bekannter Werkstoff für eine Unterlage</translation>
    </message>
    <message>
        <source>%1 is no known material for a hose</source>
        <translation>%1 ist kein bekannter Werkstoff für einen Schlauch</translation>
    </message>
    <message>
        <source>%1 is far from the %2 that the stated size and wall would weigh</source>
        <translation>%1 ist weit von den %2 entfernt, die Größe und Wand wie angegeben wögen</translation>
    </message>
    <message>
        <source>never boil under a closed lid: it boils over, and in a tight vessel pressure rises</source>
        <translation>nie unter geschlossenem Deckel kochen: es kocht über, und in einem dichten Gefäß steigt der Druck</translation>
    </message>
    <message>
        <source>leave at least a gap</source>
        <translation>lassen Sie mindestens einen Spalt</translation>
    </message>
    <message>
        <source>this list of layers is empty</source>
        <translation>diese Liste von Schichten ist leer</translation>
    </message>
    <message>
        <source>leave %1 out, or write e.g. %2</source>
        <translation>lassen Sie %1 weg oder schreiben Sie z. B. %2</translation>
    </message>
    <message>
        <source>%1 is no known outside of a jacket</source>
        <translation>%1 ist keine bekannte Außenseite eines Mantels</translation>
    </message>
    <message>
        <source>write %1, or an emissivity</source>
        <translation>schreiben Sie %1 oder einen Emissionsgrad</translation>
    </message>
    <message>
        <source>this jacket is around nothing</source>
        <translation>dieser Mantel ist um nichts herum</translation>
    </message>
    <message>
        <source>write layers for &quot;side&quot;, &quot;base&quot; or &quot;lid&quot;</source>
        <translation>schreiben Sie Schichten für &quot;side&quot;, &quot;base&quot; oder &quot;lid&quot;</translation>
    </message>
    <message>
        <source>two walls of %1 leave no room for wort in a hose of %2 outer diameter</source>
        <translation>zwei Wände von %1 lassen der Würze in einem Schlauch von %2 Außendurchmesser keinen Platz</translation>
    </message>
    <message>
        <source>%1 is no circuit of the catalogue</source>
        <translation>%1 ist kein Stromkreis des Katalogs</translation>
    </message>
    <message>
        <source>write %1, or &quot;voltage&quot; and &quot;current&quot;</source>
        <translation>schreiben Sie %1 oder &quot;voltage&quot; und &quot;current&quot;</translation>
    </message>
    <message>
        <source>the cable&apos;s resistance is stated already as &quot;loop_resistance&quot;</source>
        <translation>der Widerstand des Kabels ist schon als &quot;loop_resistance&quot; angegeben</translation>
    </message>
    <message>
        <source>both &quot;element&quot; and &quot;elements&quot; are stated</source>
        <translation>&quot;element&quot; und &quot;elements&quot; sind beide angegeben</translation>
    </message>
    <message>
        <source>two circuits feed two elements, not %1</source>
        <translation>zwei Stromkreise speisen zwei Heizelemente, nicht %1</translation>
    </message>
    <message>
        <source>%1 is no outlet of %2</source>
        <translation>%1 ist keine Steckdose von: %2</translation>
    </message>
    <message>
        <source>heating the strike water</source>
        <translation>Erhitzen des Einmaischwassers</translation>
    </message>
    <message>
        <source>mashing in</source>
        <translation>Einmaischen</translation>
    </message>
    <message>
        <source>heating the mash</source>
        <translation>Aufheizen der Maische</translation>
    </message>
    <message>
        <source>the mash rest</source>
        <translation>Rast</translation>
    </message>
    <message>
        <source>heating to the boil</source>
        <translation>Aufheizen zum Kochen</translation>
    </message>
    <message>
        <source>the boil</source>
        <translation>Kochen</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>Brautag</translation>
    </message>
    <message>
        <source>grain and water do not fit: %1 of water and %2 of grain fill %3 when hot, and the vessel holds %4</source>
        <translation>Malz und Wasser passen nicht hinein: %1 Wasser und %2 Malz füllen heiß %3, und das Gefäß fasst %4</translation>
    </message>
    <message>
        <source>the water does not fit: %1 of water fill %2 when hot, and the vessel holds %3</source>
        <translation>das Wasser passt nicht hinein: %1 Wasser füllen heiß %2, und das Gefäß fasst %3</translation>
    </message>
    <message>
        <source>take a smaller batch or a larger vessel</source>
        <translation>nehmen Sie einen kleineren Sud oder ein größeres Gefäß</translation>
    </message>
    <message>
        <source>the element, %1 high, needs at least %2</source>
        <translation>das Heizelement, %1 hoch, braucht mindestens %2</translation>
    </message>
    <message>
        <source>a heater below the base needs at least %1</source>
        <translation>eine Heizung unter dem Boden braucht mindestens %1</translation>
    </message>
    <message>
        <source>the element would run dry during %1: only %2 stand in the vessel, and %3</source>
        <translation>das Heizelement liefe trocken (%1): nur %2 stehen im Gefäß, und %3</translation>
    </message>
    <message>
        <source>never switch on an element that is not fully covered</source>
        <translation>schalten Sie nie ein Heizelement ein, das nicht ganz bedeckt ist</translation>
    </message>
    <message>
        <source>the boil is longer than the wort lasts: after %1 only %2 are left of %3, a syrup of more than %4 extract, which burns on the element</source>
        <translation>das Kochen dauert länger, als die Würze reicht: nach %1 sind nur %2 von %3 übrig, ein Sirup von mehr als %4 Extrakt, der am Heizelement anbrennt</translation>
    </message>
    <message>
        <source>boil for less time, with less power, or start with more water</source>
        <translation>kochen Sie kürzer, mit weniger Leistung, oder beginnen Sie mit mehr Wasser</translation>
    </message>
    <message>
        <source>the boil is longer than the water lasts: after %1 only %2 are left, and %3 to stay covered</source>
        <translation>das Kochen dauert länger, als das Wasser reicht: nach %1 sind nur %2 übrig, und %3, um bedeckt zu bleiben</translation>
    </message>
    <message>
        <source>boil for less time, with less power, or start with more</source>
        <translation>kochen Sie kürzer, mit weniger Leistung, oder beginnen Sie mit mehr</translation>
    </message>
    <message>
        <source>for %1 the strike water would have to be at %2, but it boils at %3 here</source>
        <translation>für %1 müsste das Einmaischwasser %2 haben, aber es kocht hier bei %3</translation>
    </message>
    <message>
        <source>take more water, less or warmer grain, or a cooler first rest</source>
        <translation>nehmen Sie mehr Wasser, weniger oder wärmeres Malz oder eine kühlere erste Rast</translation>
    </message>
    <message>
        <source>water of %1 is hotter than strike water may be, %2 for %3</source>
        <translation>Wasser von %1 ist heißer, als Einmaischwasser sein darf: %2 für %3</translation>
    </message>
    <message>
        <source>take cooler water</source>
        <translation>nehmen Sie kühleres Wasser</translation>
    </message>
    <message>
        <source>the document is larger than 4 MB</source>
        <translation>das Dokument ist größer als 4 MB</translation>
    </message>
    <message>
        <source>the document is not in UTF-8, but probably in UTF-16</source>
        <translation>das Dokument ist nicht in UTF-8, sondern wohl in UTF-16</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>sichern Sie es als UTF-8</translation>
    </message>
    <message>
        <source>the document is empty</source>
        <translation>das Dokument ist leer</translation>
    </message>
    <message>
        <source>this is not UTF-8</source>
        <translation>dies ist nicht UTF-8</translation>
    </message>
    <message>
        <source>save the document as UTF-8</source>
        <translation>sichern Sie das Dokument als UTF-8</translation>
    </message>
    <message>
        <source>more than %1 levels of brackets</source>
        <translation>mehr als %1 Ebenen von Klammern</translation>
    </message>
    <message>
        <source>this object has more than %1 keys</source>
        <translation>dieses Objekt hat mehr als %1 Schlüssel</translation>
    </message>
    <message>
        <source>this number is too large</source>
        <translation>diese Zahl ist zu groß</translation>
    </message>
    <message>
        <source>comments are not accepted</source>
        <translation>Kommentare sind nicht zulässig</translation>
    </message>
    <message>
        <source>remove this one</source>
        <translation>entfernen Sie diesen</translation>
    </message>
    <message>
        <source>texts stand in double quotation marks</source>
        <translation>Texte stehen in doppelten Anführungszeichen</translation>
    </message>
    <message>
        <source>a text is not closed at the end of its line</source>
        <translation>ein Text ist am Ende seiner Zeile nicht geschlossen</translation>
    </message>
    <message>
        <source>there is a comma too many before %1</source>
        <translation>vor %1 steht ein Komma zu viel</translation>
    </message>
    <message>
        <source>a comma or a colon is missing before %1</source>
        <translation>vor %1 fehlt ein Komma oder ein Doppelpunkt</translation>
    </message>
    <message>
        <source>%1 does not belong here</source>
        <translation>%1 gehört nicht hierher</translation>
    </message>
    <message>
        <source>texts need quotation marks, and words without them are true, false and null only</source>
        <translation>Texte brauchen Anführungszeichen, und Wörter ohne sie sind nur true, false und null</translation>
    </message>
    <message>
        <source>%1 is a folder, not a file</source>
        <translation>%1 ist ein Ordner, keine Datei</translation>
    </message>
    <message>
        <source>%1 may not be read by you: permission is missing</source>
        <translation>%1 dürfen Sie nicht lesen: die Berechtigung fehlt</translation>
    </message>
    <message>
        <source>%1 may not be saved by you: permission is missing</source>
        <translation>%1 dürfen Sie nicht sichern: die Berechtigung fehlt</translation>
    </message>
    <message>
        <source>%1 cannot be saved: the disk is full</source>
        <translation>%1 lässt sich nicht sichern: der Datenträger ist voll</translation>
    </message>
    <message>
        <source>%1 cannot be saved: its folder is not there</source>
        <translation>%1 lässt sich nicht sichern: der Ordner ist nicht da</translation>
    </message>
    <message>
        <source>%1 has no file name</source>
        <translation>%1 hat keinen Dateinamen</translation>
    </message>
    <message>
        <source>line %1, column %2: %3</source>
        <translation>Zeile %1, Spalte %2: %3</translation>
    </message>
    <message>
        <source>in %1 at %2: %3</source>
        <translation>in %1 bei %2: %3</translation>
    </message>
    <message>
        <source>in %1: %2</source>
        <translation>in %1: %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>write %1</source>
        <translation>schreiben Sie %1</translation>
    </message>
    <message>
        <source>%1, e.g. %2</source>
        <translation>%1, z. B. %2</translation>
    </message>
    <message>
        <source>%1, or &quot;none&quot;</source>
        <translation>%1 oder &quot;none&quot;</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 ist %2</translation>
    </message>
    <message>
        <source>m2*K/W, ft2*h*degF/Btu, or as &quot;R 1.8&quot;</source>
        <translation>m2*K/W, ft2*h*degF/Btu oder als &quot;R 1.8&quot;</translation>
    </message>
    <message>
        <source>the document ends too early</source>
        <translation>das Dokument endet zu früh</translation>
    </message>
    <message>
        <source>a bracket or a quotation mark is not closed</source>
        <translation>eine Klammer oder ein Anführungszeichen ist nicht geschlossen</translation>
    </message>
    <message>
        <source>the lowest voltage is above the nominal one, %1</source>
        <translation>die niedrigste Spannung liegt über der Nennspannung, %1</translation>
    </message>
    <message>
        <source>write one below it</source>
        <translation>schreiben Sie eine darunter</translation>
    </message>
    <message>
        <source>the highest voltage is below the nominal one, %1</source>
        <translation>die höchste Spannung liegt unter der Nennspannung, %1</translation>
    </message>
    <message>
        <source>write one above it</source>
        <translation>schreiben Sie eine darüber</translation>
    </message>
    <message>
        <source>the sizes must stand in ascending order</source>
        <translation>die Größen müssen aufsteigend stehen</translation>
    </message>
    <message>
        <source>%1 is larger than %2, too large to be read here</source>
        <translation>%1 ist größer als %2, zu groß, um hier gelesen zu werden</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 kann nicht gelesen werden: %2</translation>
    </message>
    <message>
        <source>%1 cannot be saved: %2</source>
        <translation>%1 kann nicht gespeichert werden: %2</translation>
    </message>
    <message>
        <source>Interrupted system call</source>
        <translation>der Aufruf wurde unterbrochen</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Fehler beim Lesen oder Schreiben</translation>
    </message>
    <message>
        <source>No such device or address</source>
        <translation>dieses Gerät oder diese Adresse gibt es nicht</translation>
    </message>
    <message>
        <source>Bad file descriptor</source>
        <translation>die Datei ist nicht mehr geöffnet</translation>
    </message>
    <message>
        <source>Resource temporarily unavailable</source>
        <translation>im Augenblick nicht verfügbar</translation>
    </message>
    <message>
        <source>Cannot allocate memory</source>
        <translation>der Speicher reicht nicht</translation>
    </message>
    <message>
        <source>Device or resource busy</source>
        <translation>das Gerät ist belegt</translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>die Datei gibt es schon</translation>
    </message>
    <message>
        <source>Invalid cross-device link</source>
        <translation>die Orte liegen auf verschiedenen Datenträgern</translation>
    </message>
    <message>
        <source>No such device</source>
        <translation>dieses Gerät gibt es nicht</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>ein Teil des Pfades ist kein Ordner</translation>
    </message>
    <message>
        <source>Invalid argument</source>
        <translation>unzulässige Angabe</translation>
    </message>
    <message>
        <source>Too many open files in system</source>
        <translation>im System sind zu viele Dateien geöffnet</translation>
    </message>
    <message>
        <source>Too many open files</source>
        <translation>zu viele Dateien sind geöffnet</translation>
    </message>
    <message>
        <source>Text file busy</source>
        <translation>die Datei wird gerade ausgeführt</translation>
    </message>
    <message>
        <source>File too large</source>
        <translation>die Datei ist zu groß</translation>
    </message>
    <message>
        <source>Too many links</source>
        <translation>zu viele Verweise</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>der Dateiname ist zu lang</translation>
    </message>
    <message>
        <source>Too many levels of symbolic links</source>
        <translation>zu viele Verweise führen aufeinander</translation>
    </message>
    <message>
        <source>Value too large for defined data type</source>
        <translation>ein Wert ist zu groß</translation>
    </message>
    <message>
        <source>Operation not supported</source>
        <translation>das wird hier nicht unterstützt</translation>
    </message>
    <message>
        <source>Connection timed out</source>
        <translation>die Verbindung hat zu lange gebraucht</translation>
    </message>
    <message>
        <source>Host is down</source>
        <translation>der Rechner ist nicht erreichbar</translation>
    </message>
    <message>
        <source>Stale file handle</source>
        <translation>die Datei ist auf dem Server nicht mehr da</translation>
    </message>
    <message>
        <source>Remote I/O error</source>
        <translation>Fehler beim Lesen oder Schreiben auf dem Server</translation>
    </message>
    <message>
        <source>a mash at %1 is not possible: water boils at %2 here, and a mash must stay %3 below</source>
        <translation>eine Maische bei %1 ist nicht möglich: Wasser kocht hier bei %2, und eine Maische muss %3 darunter bleiben</translation>
    </message>
    <message>
        <source>from %1 is accepted, usual are %2 to %3</source>
        <translation>zulässig ist ab %1, üblich sind %2 bis %3</translation>
    </message>
    <message>
        <source>usual are %1 to %2</source>
        <translation>üblich sind %1 bis %2</translation>
    </message>
    <message>
        <source>the outlet cannot be judged; there is %1</source>
        <translation>die Steckdose lässt sich nicht beurteilen; es gibt %1</translation>
    </message>
    <message>
        <source>%1, or leave it out and name a file with rules of your own as &quot;rules&quot; (--rules at the terminal)</source>
        <translation>%1, oder lassen Sie das weg und nennen Sie eine Datei mit eigenen Regeln als &quot;rules&quot; (--rules am Terminal)</translation>
    </message>
    <message>
        <source>%1 is a link that leads out of the plan&apos;s folder</source>
        <translation>%1 ist eine Verknüpfung, die aus dem Ordner des Plans hinausführt</translation>
    </message>
    <message>
        <source>a picture that this program drew (SVG)</source>
        <translation>ein Bild, das dieses Programm gezeichnet hat (SVG)</translation>
    </message>
    <message>
        <source>a picture that this program drew (PNG)</source>
        <translation>ein Bild, das dieses Programm gezeichnet hat (PNG)</translation>
    </message>
    <message>
        <source>a table that this program wrote (CSV)</source>
        <translation>eine Tabelle, die dieses Programm geschrieben hat (CSV)</translation>
    </message>
    <message>
        <source>the numbers of a picture that this program wrote (JSON)</source>
        <translation>die Zahlen eines Bildes, die dieses Programm geschrieben hat (JSON)</translation>
    </message>
    <message>
        <source>a report that this program wrote (PDF)</source>
        <translation>ein Bericht, den dieses Programm geschrieben hat (PDF)</translation>
    </message>
    <message>
        <source>a result that this program wrote (JSON)</source>
        <translation>ein Ergebnis, das dieses Programm geschrieben hat (JSON)</translation>
    </message>
    <message>
        <source>a plan</source>
        <translation>ein Plan</translation>
    </message>
    <message>
        <source>a JSON document that this program did not write</source>
        <translation>ein JSON-Dokument, das dieses Programm nicht geschrieben hat</translation>
    </message>
    <message>
        <source>a picture that this program did not draw (SVG)</source>
        <translation>ein Bild, das dieses Programm nicht gezeichnet hat (SVG)</translation>
    </message>
    <message>
        <source>a picture that this program did not draw (PNG)</source>
        <translation>ein Bild, das dieses Programm nicht gezeichnet hat (PNG)</translation>
    </message>
    <message>
        <source>a PDF document that this program did not write</source>
        <translation>ein PDF-Dokument, das dieses Programm nicht geschrieben hat</translation>
    </message>
    <message>
        <source>no file that could be replaced</source>
        <translation>keine Datei, die sich ersetzen ließe</translation>
    </message>
    <message>
        <source>a file that this program did not write</source>
        <translation>eine Datei, die dieses Programm nicht geschrieben hat</translation>
    </message>
    <message>
        <source>%1 names no region</source>
        <translation>%1 benennt keine Region</translation>
    </message>
    <message>
        <source>%1, or leave it out</source>
        <translation>%1, oder lassen Sie es weg</translation>
    </message>
    <message>
        <source>the document begins with more than one byte-order mark</source>
        <translation>das Dokument beginnt mit mehr als einer Bytereihenfolge-Marke</translation>
    </message>
    <message>
        <source>save it as UTF-8 without any</source>
        <translation>speichern Sie es als UTF-8 ohne eine solche</translation>
    </message>
    <message>
        <source>%1 is half of a character</source>
        <translation>%1 ist ein halbes Zeichen</translation>
    </message>
    <message>
        <source>write the character itself, or both of its halves</source>
        <translation>schreiben Sie das Zeichen selbst oder seine beiden Hälften</translation>
    </message>
    <message>
        <source>%1 stands for no character</source>
        <translation>%1 steht für kein Zeichen</translation>
    </message>
    <message>
        <source>a backslash itself is written twice</source>
        <translation>ein umgekehrter Schrägstrich selbst wird doppelt geschrieben</translation>
    </message>
    <message>
        <source>%1 is negative</source>
        <translation>%1 ist negativ</translation>
    </message>
    <message>
        <source>only prices by &quot;times&quot; may be</source>
        <translation>nur Preise nach &quot;times&quot; dürfen es sein</translation>
    </message>
    <message>
        <source>two rigs have the letter %1</source>
        <translation>zwei Anlagen haben den Buchstaben %1</translation>
    </message>
    <message>
        <source>give each a letter of its own from a to z, e.g. %1</source>
        <translation>geben Sie jeder einen eigenen Buchstaben von a bis z, z. B. %1</translation>
    </message>
    <message>
        <source>%1 is not a letter that a rig can have</source>
        <translation>%1 ist kein Buchstabe, den eine Anlage haben kann</translation>
    </message>
    <message>
        <source>write one from a to z, e.g. %1</source>
        <translation>schreiben Sie einen von a bis z, z. B. %1</translation>
    </message>
    <message>
        <source>a rig in a document of its own has no others beside it that it could be the same as; leave this out</source>
        <translation>eine Anlage in einem eigenen Dokument hat keine anderen neben sich, denen sie gleichen könnte; lassen Sie dies weg</translation>
    </message>
    <message>
        <source>this rig is the same as itself, directly or over other rigs</source>
        <translation>diese Anlage gleicht sich selbst, unmittelbar oder über andere Anlagen</translation>
    </message>
    <message>
        <source>let one of them state all of its parts, e.g. with %1</source>
        <translation>geben Sie bei einer davon alle Teile an, z. B. mit %1</translation>
    </message>
    <message>
        <source>both &quot;from&quot; and &quot;same_as&quot; are stated</source>
        <translation>„from“ und „same_as“ sind beide angegeben</translation>
    </message>
    <message>
        <source>no rig of this plan has the letter %1</source>
        <translation>keine Anlage dieses Plans hat den Buchstaben %1</translation>
    </message>
    <message>
        <source>there is no other rig; state the parts here</source>
        <translation>es gibt keine andere Anlage; geben Sie die Teile hier an</translation>
    </message>
    <message>
        <source>for the rig %1, which has this from here: %2</source>
        <translation>für die Anlage %1, die dies von hier hat: %2</translation>
    </message>
    <message>
        <source>a sheet to brew by that this program wrote (HTML)</source>
        <translation>ein Blatt zum Brauen, das dieses Programm geschrieben hat (HTML)</translation>
    </message>
    <message>
        <source>a page that this program did not write (HTML)</source>
        <translation>eine Seite, die dieses Programm nicht geschrieben hat (HTML)</translation>
    </message>
    <message>
        <source>%1 of this tube displace %2, which is %3 of the kettle: such a coil does not go in beside the wort</source>
        <translation>%1 dieses Rohres verdrängen %2, das sind %3 des Kessels: Eine solche Spirale passt nicht neben die Würze</translation>
    </message>
    <message>
        <source>up to %1 is accepted, usual are %2 to %3 of tube</source>
        <translation>bis %1 sind möglich, üblich sind %2 bis %3 Rohr</translation>
    </message>
    <message>
        <source>wort at %1 is not possible with cooling water of %2: it comes to about %3, %4 above the water</source>
        <translation>Würze von %1 ist mit Kühlwasser von %2 nicht möglich: Sie kommt auf etwa %3, %4 über dem Wasser</translation>
    </message>
    <message>
        <source>pitch at %1 or more, take colder water, or bring the rest by a bath of ice round the kettle, about %2 for each %3 of wort</source>
        <translation>bei mindestens %1 anstellen, kälteres Wasser nehmen oder den Rest mit einem Eisbad um den Kessel schaffen, etwa %2 je %3 Würze</translation>
    </message>
    <message>
        <source>a sheet to brew by that this program wrote (PDF)</source>
        <translation>ein Blatt zum Brauen, das dieses Programm geschrieben hat (PDF)</translation>
    </message>
    <message>
        <source>a heater outside the vessel has no skin in the wort</source>
        <translation>eine Heizung außerhalb des Kessels hat keine Oberfläche in der Würze</translation>
    </message>
    <message>
        <source>take out its size, or state how high its top is</source>
        <translation>nehmen Sie ihre Maße heraus, oder geben Sie an, wie hoch sie reicht</translation>
    </message>
    <message>
        <source>&quot;day_starts&quot; says when to begin, and &quot;ready&quot; has that solved</source>
        <translation>„day_starts“ sagt, wann begonnen wird, und „ready“ lässt das ausrechnen</translation>
    </message>
    <message>
        <source>write one of &quot;day_starts&quot; and &quot;ready&quot;</source>
        <translation>schreiben Sie entweder „day_starts“ oder „ready“</translation>
    </message>
    <message>
        <source>this plan mashes nothing: it has no %1</source>
        <translation>dieser Plan maischt nichts: es gibt darin kein %1</translation>
    </message>
    <message>
        <source>add &quot;grain&quot; and &quot;mash&quot; to its &quot;batch&quot;, or write %1</source>
        <translation>fügen Sie „grain“ und „mash“ zu „batch“ hinzu, oder schreiben Sie %1</translation>
    </message>
    <message>
        <source>nothing says how the wort of %1 is chilled</source>
        <translation>nirgends steht, wie die Würze von %1 gekühlt wird</translation>
    </message>
    <message>
        <source>state the &quot;chiller&quot; of each rig</source>
        <translation>geben Sie bei jeder Anlage „chiller“ an</translation>
    </message>
    <message>
        <source>both &quot;mass&quot; and &quot;water&quot; of an addition are stated</source>
        <translation>von einer Zugabe sind „mass“ und „water“ angegeben</translation>
    </message>
    <message>
        <source>neither &quot;mass&quot; nor &quot;water&quot; of an addition is stated</source>
        <translation>von einer Zugabe ist weder „mass“ noch „water“ angegeben</translation>
    </message>
    <message>
        <source>water has no extract, but %1 are stated</source>
        <translation>Wasser hat keinen Extrakt, angegeben sind aber %1</translation>
    </message>
    <message>
        <source>write &quot;mass&quot; for &quot;water&quot;, or leave this out</source>
        <translation>„mass“ statt „water“ schreiben oder das hier weglassen</translation>
    </message>
    <message>
        <source>an addition at %1 is not possible: water boils at %2 here</source>
        <translation>eine Zugabe mit %1 ist nicht möglich: Wasser kocht hier bei %2</translation>
    </message>
    <message>
        <source>it may be as hot as that</source>
        <translation>so heiß darf sie sein</translation>
    </message>
    <message>
        <source>%1 before the end is before the boil begins, which lasts %2</source>
        <translation>%1 vor dem Ende liegt vor dem Beginn des Kochens, das %2 dauert</translation>
    </message>
    <message>
        <source>accepted is 0 min to %1</source>
        <translation>zulässig ist 0 min bis %1</translation>
    </message>
    <message>
        <source>%1 does not fit: with it %2 would stand in %3, which holds %4</source>
        <translation>%1 passt nicht hinein: damit stünden %2 in %3, und %4 fasst das Gefäß</translation>
    </message>
    <message>
        <source>add less of it, or take a smaller batch or a larger vessel</source>
        <translation>weniger davon zugeben, einen kleineren Sud oder ein größeres Gefäß nehmen</translation>
    </message>
    <message>
        <source>%1 of %2 make a syrup of more than %3 extract, which burns on the element</source>
        <translation>%1 von %2 ergeben einen Sirup mit mehr als %3 Extrakt, der am Heizstab anbrennt</translation>
    </message>
    <message>
        <source>add less of it</source>
        <translation>geben Sie weniger davon zu</translation>
    </message>
    <message>
        <source>there is no boil for it to go into</source>
        <translation>es gibt kein Kochen, in das sie kommen könnte</translation>
    </message>
    <message>
        <source>state a boil, or leave this out</source>
        <translation>ein Kochen angeben oder das hier weglassen</translation>
    </message>
    <message>
        <source>with %1 of %2 too little of the %3 that are wanted is left to boil</source>
        <translation>mit %1 %2 bleibt von den gewünschten %3 zu wenig zum Kochen</translation>
    </message>
    <message>
        <source>add less of it, or ask for more wort</source>
        <translation>geben Sie weniger davon zu oder verlangen Sie mehr Würze</translation>
    </message>
    <message>
        <source>draining</source>
        <translation>das Abtropfen</translation>
    </message>
    <message>
        <source>the element would stand dry once the grain is lifted: only %1 stand in the vessel before the rinsing water is in, and %2</source>
        <translation>das Heizelement stünde trocken, sobald das Malz herausgehoben ist: Nur %1 stehen im Kessel, ehe das Nachgusswasser darin ist, und %2</translation>
    </message>
    <message>
        <source>let the grain drain with the element off</source>
        <translation>lassen Sie das Malz mit dem Heizelement aus abtropfen</translation>
    </message>
    <message>
        <source>%1 of rinsing water do not fit: with them %2 would stand in %3 when hot, which holds %4</source>
        <translation>%1 Nachgusswasser passen nicht hinein: Damit stünden heiß %2 in %3, und es fasst %4</translation>
    </message>
    <message>
        <source>want less wort, or take a larger vessel</source>
        <translation>weniger Würze wünschen oder einen größeren Kessel nehmen</translation>
    </message>
    <message>
        <source>none fits: take a smaller batch or a larger vessel</source>
        <translation>keines passt: einen kleineren Sud oder einen größeren Kessel nehmen</translation>
    </message>
    <message>
        <source>about %1 fit, filled to the brim; leave room for the foam</source>
        <translation>etwa %1 passen, bis zum Rand gefüllt; lassen Sie Platz für den Schaum</translation>
    </message>
    <message>
        <source>rinsing water at %1 is not possible: water boils at %2 here</source>
        <translation>Nachgusswasser mit %1 ist nicht möglich: Wasser kocht hier bei %2</translation>
    </message>
    <message>
        <source>rinsing water at %1 is colder than it is drawn, at %2</source>
        <translation>Nachgusswasser mit %1 ist kälter, als es gezapft wird, mit %2</translation>
    </message>
    <message>
        <source>accepted is %1 to %2</source>
        <translation>angenommen wird %1 bis %2</translation>
    </message>
    <message>
        <source>there is no grain to lift</source>
        <translation>es gibt kein Malz zum Herausheben</translation>
    </message>
    <message>
        <source>rinsing water that is not heated by electricity has no use for this</source>
        <translation>Nachgusswasser, das nicht mit Strom erhitzt wird, braucht das nicht</translation>
    </message>
    <message>
        <source>state another &quot;heated&quot; or leave this out</source>
        <translation>ein anderes &quot;heated&quot; angeben oder dies weglassen</translation>
    </message>
    <message>
        <source>%1 of rinsing water are too much: %2 of wort need them all for the mash of %3 of grain</source>
        <translation>%1 Nachgusswasser sind zu viel: %2 Würze brauchen alles Wasser für die Maische aus %3 Malz</translation>
    </message>
    <message>
        <source>take less grain, or leave the rinse out</source>
        <translation>weniger Malz nehmen oder den Nachguss weglassen</translation>
    </message>
    <message>
        <source>%1 of rinsing water leave too little of the water for the mash of %2 of grain</source>
        <translation>%1 Nachgusswasser lassen zu wenig Wasser für die Maische aus %2 Malz</translation>
    </message>
    <message>
        <source>up to about %1 are accepted</source>
        <translation>bis etwa %1 werden angenommen</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>Ri&amp;g</source>
        <translation>Anlag&amp;e</translation>
    </message>
    <message>
        <source>Batches a &amp;year</source>
        <translation>Sude im &amp;Jahr</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <source>&amp;Against</source>
        <translation>Übe&amp;r</translation>
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
        <source>Rules, arithmetic and sources</source>
        <translation>Regeln, Rechnung und Quellen</translation>
    </message>
    <message>
        <source>&amp;Whole answer</source>
        <translation>&amp;Ganze Antwort</translation>
    </message>
    <message>
        <source>Shows or folds away what follows the first sentence</source>
        <translation>Zeigt oder verbirgt, was auf den ersten Satz folgt</translation>
    </message>
    <message>
        <source>power written on the element</source>
        <translation>Leistung laut Aufdruck</translation>
    </message>
    <message>
        <source>power at the supply&apos;s voltage</source>
        <translation>Leistung bei Netzspannung</translation>
    </message>
    <message>
        <source>with a jacket and without</source>
        <translation>mit Mantel und ohne</translation>
    </message>
    <message>
        <source>what a jacket saves</source>
        <translation>was ein Mantel spart</translation>
    </message>
    <message>
        <source>and with a jacket supposed, or bare</source>
        <translation>und angenommen mit Mantel, oder ohne</translation>
    </message>
    <message>
        <source>each kettle as it is</source>
        <translation>jeder Kessel, wie er ist</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>&amp;Wish</source>
        <translation>&amp;Wunsch</translation>
    </message>
    <message>
        <source>what it lacks most</source>
        <translation>was am meisten fehlt</translation>
    </message>
    <message>
        <source>Compared &amp;with</source>
        <translation>Ver&amp;glichen mit</translation>
    </message>
    <message>
        <source>Drawn: %1</source>
        <translation>Gezeichnet: %1</translation>
    </message>
    <message>
        <source>Drawn in every picture:</source>
        <translation>In jedem Bild gezeichnet:</translation>
    </message>
    <message>
        <source>All cautions (%1)</source>
        <translation>Alle Hinweise (%1)</translation>
    </message>
    <message>
        <source>Shows all that there is to take care of, or folds it away</source>
        <translation>Zeigt alles, worauf zu achten ist, oder klappt es weg</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>there is no column %1; a head or a number from 1 to %2 is accepted</source>
        <translation>eine Spalte %1 gibt es nicht; angenommen wird ein Spaltenkopf oder eine Zahl von 1 bis %2</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>column %1, %2</source>
        <translation>Spalte %1, %2</translation>
    </message>
    <message>
        <source>in %1, by their size</source>
        <translation>in %1, der Größe nach</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>by the clock</source>
        <translation>nach der Uhr</translation>
    </message>
    <message>
        <source>in seconds since the day began</source>
        <translation>in Sekunden seit Beginn des Tages</translation>
    </message>
    <message>
        <source>in minutes since the day began</source>
        <translation>in Minuten seit Beginn des Tages</translation>
    </message>
    <message>
        <source>in hours since the day began</source>
        <translation>in Stunden seit Beginn des Tages</translation>
    </message>
    <message>
        <source>time: %1, %2</source>
        <translation>Zeit: %1, %2</translation>
    </message>
    <message>
        <source>temperature of the wort: %1, %2</source>
        <translation>Temperatur der Würze: %1, %2</translation>
    </message>
    <message>
        <source>date: %1</source>
        <translation>Datum: %1</translation>
    </message>
    <message>
        <source>energy meter: %1</source>
        <translation>Energiezähler: %1</translation>
    </message>
    <message>
        <source>volume: %1</source>
        <translation>Volumen: %1</translation>
    </message>
    <message>
        <source>gravity: %1</source>
        <translation>Stammwürze: %1</translation>
    </message>
    <message>
        <source>events: %1</source>
        <translation>Ereignisse: %1</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>nicht verwendet: %1</translation>
    </message>
    <message>
        <source>write 21:05, 9:05 pm or 2026-03-01T21:05</source>
        <translation>schreiben Sie 21:05, 9:05 pm oder 2026-03-01T21:05</translation>
    </message>
    <message>
        <source>nothing was read in %1; write what was read behind the time, e.g. &quot;21:05 66.3 °C&quot;</source>
        <translation>in %1 wurde nichts abgelesen; schreiben Sie das Abgelesene hinter die Zeit, z. B. „21:05 66,3 °C“</translation>
    </message>
    <message>
        <source>there is no time</source>
        <translation>es steht keine Zeit da</translation>
    </message>
    <message>
        <source>%1 is before the plan&apos;s day begins, at %2</source>
        <translation>%1 liegt vor dem Beginn des geplanten Tages um %2</translation>
    </message>
    <message>
        <source>%1 comes after %2 in the line before; if the clock was put back, write times with their offset, e.g. 2026-10-25T02:10+01:00</source>
        <translation>%1 folgt auf %2 in der Zeile davor; wurde die Uhr zurückgestellt, schreiben Sie die Zeiten mit ihrer Verschiebung, z. B. 2026-10-25T02:10+01:00</translation>
    </message>
    <message>
        <source>%1 comes after %2 in the line before; readings follow the clock</source>
        <translation>%1 folgt auf %2 in der Zeile davor; Ablesungen stehen in der Reihenfolge der Uhr</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1 is no time since the day began, e.g. 95</source>
        <translation>%1 ist keine Zeit seit Beginn des Tages, z. B. 95</translation>
    </message>
    <message>
        <source>%1 is no time of a clock</source>
        <translation>%1 ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>%1 is neither a reading nor an event; events are &quot;plugged in&quot;, &quot;grain in&quot;, &quot;unplugged&quot;, &quot;heating&quot;, &quot;boil&quot;, &quot;lid on&quot; and &quot;lid off&quot;</source>
        <translation>%1 ist weder eine Ablesung noch ein Ereignis; Ereignisse sind „eingeschaltet“, „eingemaischt“, „ausgesteckt“, „heizen“, „kocht“, „Deckel zu“ und „Deckel auf“</translation>
    </message>
    <message>
        <source>%1 is no reading; a number is accepted, with or without its unit, e.g. 66.3 °C</source>
        <translation>%1 ist keine Ablesung; angenommen wird eine Zahl mit oder ohne ihre Einheit, z. B. 66,3 °C</translation>
    </message>
    <message>
        <source>%1: °C, °F, K, kWh, L, US gal, SG and °P are units of readings</source>
        <translation>%1: Einheiten von Ablesungen sind °C, °F, K, kWh, L, US gal, SG und °P</translation>
    </message>
    <message>
        <source>%1 is hotter than wort can be there, which boils at %2</source>
        <translation>%1 ist heißer, als Würze dort sein kann; sie kocht bei %2</translation>
    </message>
    <message>
        <source>%1 is colder than wort can be</source>
        <translation>%1 ist kälter, als Würze sein kann</translation>
    </message>
    <message>
        <source>the meter runs backwards, from %1 to %2</source>
        <translation>der Zähler läuft rückwärts, von %1 auf %2</translation>
    </message>
    <message>
        <source>%1 is no gravity of wort; 0.980 to 1.200 is accepted</source>
        <translation>%1 ist keine Dichte einer Würze; angenommen wird 0,980 bis 1,200</translation>
    </message>
    <message>
        <source>the gravity falls in the boil, from %1 to %2</source>
        <translation>die Dichte fällt beim Kochen, von %1 auf %2</translation>
    </message>
    <message>
        <source>%1 more lines are wrong, of which this is the last</source>
        <translation>%1 weitere Zeilen sind falsch; diese ist die letzte davon</translation>
    </message>
    <message>
        <source>no reading was found; lines such as &quot;21:05 66.3 °C&quot; are accepted</source>
        <translation>es wurde keine Ablesung gefunden; angenommen werden Zeilen wie „21:05 66,3 °C“</translation>
    </message>
    <message>
        <source>one temperature alone tells little: the thermometer may be off by as much</source>
        <translation>eine einzige Temperatur sagt wenig: so weit kann das Thermometer selbst daneben liegen</translation>
    </message>
    <message>
        <source>all temperatures are the same; does the thermometer hang?</source>
        <translation>alle Temperaturen sind gleich; hängt das Thermometer?</translation>
    </message>
    <message>
        <source>%1: wort is 0 to 34 °P</source>
        <translation>%1: Würze hat 0 bis 34 °P</translation>
    </message>
    <message>
        <source>%1 never comes to what is to be ready, so nobody knows when the day of these readings began</source>
        <translation>%1 kommt nie zu dem, was fertig sein soll; also weiß niemand, wann der Tag dieser Ablesungen begann</translation>
    </message>
    <message>
        <source>state when it began in its place</source>
        <translation>geben Sie stattdessen an, wann er begann</translation>
    </message>
</context>
<context>
    <name>Rig</name>
    <message>
        <source>%1 metal</source>
        <translation>Metall, %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%2 (%1)</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>on a circuit of %1 and %2</source>
        <translation>an einem Stromkreis von %1 und %2</translation>
    </message>
    <message>
        <source>on a circuit of %1</source>
        <translation>an einem Stromkreis von %1</translation>
    </message>
    <message>
        <source>%1 in series</source>
        <translation>%1 in Reihe</translation>
    </message>
    <message>
        <source>%1 in parallel</source>
        <translation>%1 parallel</translation>
    </message>
    <message>
        <source>no jacket</source>
        <translation>ohne Mantel</translation>
    </message>
    <message>
        <source>a jacket of %1</source>
        <translation>Mantel: %1</translation>
    </message>
    <message>
        <source>%1 with %2 outside</source>
        <translation>%1, außen %2</translation>
    </message>
    <message>
        <source>no lid</source>
        <translation>ohne Deckel</translation>
    </message>
    <message>
        <source>lid off in the boil</source>
        <translation>beim Kochen ohne Deckel</translation>
    </message>
    <message>
        <source>lid open by %1 in the boil</source>
        <translation>Deckel beim Kochen zu %1 offen</translation>
    </message>
    <message>
        <source>lid open by %1 for strike, %2 in the mash, %3 on the way to the boil and %4 in the boil</source>
        <translation>Deckel beim Erhitzen des Wassers zu %1 offen, in der Maische zu %2, auf dem Weg zum Kochen zu %3 und beim Kochen zu %4</translation>
    </message>
    <message>
        <source>%1 of the power in the boil</source>
        <translation>%1 der Leistung beim Kochen</translation>
    </message>
    <message>
        <source>all of the power in the boil</source>
        <translation>beim Kochen die ganze Leistung</translation>
    </message>
    <message>
        <source>a hose of %1</source>
        <translation>mit einem Schlauch von %1</translation>
    </message>
    <message>
        <source>no hose</source>
        <translation>ohne Schlauch</translation>
    </message>
    <message>
        <source>a pump of %1</source>
        <translation>mit einer Pumpe von %1</translation>
    </message>
    <message>
        <source>no pump</source>
        <translation>ohne Pumpe</translation>
    </message>
    <message>
        <source>on legs</source>
        <translation>auf Füßen</translation>
    </message>
    <message>
        <source>on a thick floor of %1</source>
        <translation>auf einem dicken Boden (%1)</translation>
    </message>
    <message>
        <source>on a table of %1, %2 thick</source>
        <translation>auf einem %2 dicken Tisch (%1)</translation>
    </message>
    <message>
        <source>on the usual table</source>
        <translation>auf dem üblichen Tisch</translation>
    </message>
    <message>
        <source>no second circuit</source>
        <translation>ohne zweiten Stromkreis</translation>
    </message>
    <message>
        <source>a kettle of %1 in %2 with %3 %4 and %5, %6</source>
        <translation>ein Kessel von %1, %2, mit %3 %4 und %5, %6</translation>
    </message>
    <message>
        <source>a kettle of %1 in %2 with %3 %4, %5</source>
        <translation>ein Kessel von %1, %2, mit %3 %4, %5</translation>
    </message>
    <message>
        <source>like %1</source>
        <translation>wie %1</translation>
    </message>
    <message>
        <source>like %1, but %2</source>
        <translation>wie %1, aber %2</translation>
    </message>
    <message>
        <source>a second element of %1 %2</source>
        <translation>einem zweiten Element von %1 %2</translation>
    </message>
    <message>
        <source>also a second element of %1 %2</source>
        <translation>dazu ein zweites Element von %1 %2</translation>
    </message>
    <message>
        <source>like %1 but for details</source>
        <translation>wie %1 bis auf Einzelheiten</translation>
    </message>
    <message>
        <source>like %1, but %2, and other details</source>
        <translation>wie %1, aber %2 und in Einzelheiten anders</translation>
    </message>
    <message>
        <source>%1%2%3</source>
        <translation>%1%2%3</translation>
    </message>
    <message>
        <source>%1 times the computed losses</source>
        <translation>mit dem %1-fachen der berechneten Verluste</translation>
    </message>
    <message>
        <source>%1 times the computed evaporation</source>
        <translation>mit dem %1-fachen der berechneten Verdunstung</translation>
    </message>
    <message>
        <source>losses and evaporation as computed</source>
        <translation>mit Verlusten und Verdunstung wie berechnet</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>a coil of %1 in stirred wort</source>
        <translation>mit einer Kühlspirale von %1 in gerührter Würze</translation>
    </message>
    <message>
        <source>a coil of %1 in still wort</source>
        <translation>mit einer Kühlspirale von %1 in ruhender Würze</translation>
    </message>
    <message>
        <source>a counterflow chiller of %1</source>
        <translation>mit einem Gegenstromkühler von %1</translation>
    </message>
    <message>
        <source>chilled by air alone</source>
        <translation>an der Luft gekühlt</translation>
    </message>
    <message>
        <source>no chiller stated</source>
        <translation>ohne angegebenen Kühler</translation>
    </message>
</context>
<context>
    <name>Room</name>
    <message>
        <source>hood over a hob</source>
        <translation>Haube über dem Herd</translation>
    </message>
    <message>
        <source>vented kitchen hood</source>
        <translation>Abluft-Küchenhaube</translation>
    </message>
    <message>
        <source>make-up air from here</source>
        <translation>ab hier Zuluft nötig</translation>
    </message>
    <message>
        <source>The air is full of it from %1 into the day on, and %2 of water run down what is coldest.</source>
        <translation>Ab %1 nach Beginn ist die Luft voll davon, und %2 Wasser laufen am Kältesten herab.</translation>
    </message>
    <message>
        <source>The air&apos;s humidity stays at %1 or below.</source>
        <translation>Die Luftfeuchte bleibt bei %1 oder darunter.</translation>
    </message>
    <message>
        <source>%1 hold %2 while most of it rises.</source>
        <translation>%1 halten %2, während das meiste aufsteigt.</translation>
    </message>
    <message>
        <source>The room has not been computed yet.</source>
        <translation>Der Raum ist noch nicht gerechnet.</translation>
    </message>
    <message>
        <source>%1 of vapour go into the room with %2.</source>
        <translation>%1 Dampf gehen mit %2 in den Raum.</translation>
    </message>
    <message>
        <source>%1 of vapour go into the room with %2, the most.</source>
        <translation>%1 Dampf gehen mit %2 in den Raum, am meisten.</translation>
    </message>
    <message>
        <source>%1 with %2, the least.</source>
        <translation>%1 mit %2, am wenigsten.</translation>
    </message>
    <message>
        <source>Humidity of the room over the day</source>
        <translation>Feuchte des Raums über den Tag</translation>
    </message>
    <message>
        <source>Relative humidity, %</source>
        <translation>Relative Feuchte, %</translation>
    </message>
    <message>
        <source>%1, what the airflow is to hold</source>
        <translation>%1, was der Luftstrom halten soll</translation>
    </message>
    <message>
        <source>100 %, the air is full</source>
        <translation>100 %, die Luft ist voll</translation>
    </message>
    <message>
        <source>best in a house, and below 60 %</source>
        <translation>im Haus am besten, und unter 60 %</translation>
    </message>
    <message>
        <source>Air that would hold %1 while most vapour rises</source>
        <translation>Luft, die %1 hielte, während der meiste Dampf aufsteigt</translation>
    </message>
    <message>
        <source>Outdoor air, %1</source>
        <translation>Außenluft, %1</translation>
    </message>
    <message>
        <source>airflow</source>
        <translation>Luftstrom</translation>
    </message>
    <message>
        <source>From the kettle</source>
        <translation>Aus dem Kessel</translation>
    </message>
    <message>
        <source>The room&apos;s air</source>
        <translation>Luft des Raums</translation>
    </message>
    <message>
        <source>Air needed while most vapour rises</source>
        <translation>Luft, während der meiste Dampf aufsteigt</translation>
    </message>
    <message>
        <source>as a multiple of: %1, %2 (%3)</source>
        <translation>als Vielfaches von: %1, %2 (%3)</translation>
    </message>
    <message>
        <source>The room: %1 of air, %2 of it exchanged with outdoors at %3 and %4 of humidity.</source>
        <translation>Der Raum: %1 Luft, davon %2 mit außen getauscht bei %3 und %4 Feuchte.</translation>
    </message>
    <message>
        <source>The plan states no air of the room; assumed: %1 of air, %2 of it exchanged with outdoors at %3 and %4 of humidity.</source>
        <translation>Der Plan nennt keine Luft des Raums; angenommen: %1 Luft, davon %2 mit außen getauscht bei %3 und %4 Feuchte.</translation>
    </message>
    <message>
        <source>A hood takes %1 of the vapour before it mixes with the room.</source>
        <translation>Eine Haube erfasst %1 des Dampfs, ehe er sich mit dem Raum mischt.</translation>
    </message>
    <message>
        <source>Indoor humidity is best between 30 and 50 % and below 60 % (United States EPA).</source>
        <translation>Im Haus ist die Feuchte am besten zwischen 30 und 50 % und unter 60 % (EPA der Vereinigten Staaten).</translation>
    </message>
    <message>
        <source>The balance is over humidity ratios, kg of water per kg of dry air; the older one over vapour densities asks 5 to 10 % more air. The room is taken as well mixed and as keeping its temperature.</source>
        <translation>Bilanziert wird über Wassergehalte, kg Wasser je kg trockener Luft; die ältere Rechnung über Dampfdichten verlangt 5 bis 10 % mehr Luft. Der Raum gilt als gut durchmischt und behält seine Temperatur.</translation>
    </message>
    <message>
        <source>ASHRAE 62.2, quoted by a national laboratory&apos;s page</source>
        <translation>ASHRAE 62.2, zitiert auf der Seite eines nationalen Labors</translation>
    </message>
    <message>
        <source>International Residential Code, quoted in a building-code forum</source>
        <translation>International Residential Code, zitiert in einem Forum zu Bauvorschriften</translation>
    </message>
    <message>
        <source>United Kingdom, Approved Document F, quoted by a testing firm&apos;s page</source>
        <translation>Vereinigtes Königreich, Approved Document F, zitiert auf der Seite einer Prüffirma</translation>
    </message>
    <message>
        <source>vented hood, on demand</source>
        <translation>Ablufthaube, nach Bedarf</translation>
    </message>
    <message>
        <source>other exhaust of a kitchen, on demand</source>
        <translation>andere Abluft einer Küche, nach Bedarf</translation>
    </message>
    <message>
        <source>enclosed kitchen, continuous, 5 air changes an hour</source>
        <translation>geschlossene Küche, ständig, 5 Luftwechsel je Stunde</translation>
    </message>
    <message>
        <source>kitchen, on demand</source>
        <translation>Küche, nach Bedarf</translation>
    </message>
    <message>
        <source>kitchen, continuous</source>
        <translation>Küche, ständig</translation>
    </message>
    <message>
        <source>hood over the hob</source>
        <translation>Haube über dem Herd</translation>
    </message>
    <message>
        <source>kitchen, fan elsewhere</source>
        <translation>Küche, Lüfter an anderer Stelle</translation>
    </message>
    <message>
        <source>commercial hoods, 15 air changes an hour</source>
        <translation>gewerbliche Hauben, 15 Luftwechsel je Stunde</translation>
    </message>
    <message>
        <source>a rule of thumb of the hood industry</source>
        <translation>eine Faustregel der Haubenhersteller</translation>
    </message>
    <message>
        <source>%1 of vapour and %2 of heat go into the room; at most %3 of vapour and %4 of heat.</source>
        <translation>%1 Dampf und %2 Wärme gehen in den Raum; höchstens %3 Dampf und %4 Wärme.</translation>
    </message>
    <message>
        <source>The air is full of vapour from %1 into the day on, and %2 of water run down what is coldest.</source>
        <translation>Ab %1 nach Beginn ist die Luft voller Dampf, und %2 Wasser laufen am Kältesten herab.</translation>
    </message>
    <message>
        <source>The air never gets moister than the %1 it begins with.</source>
        <translation>Die Luft wird nie feuchter als die %1, mit denen sie beginnt.</translation>
    </message>
    <message>
        <source>The air&apos;s humidity rises from %1 to %2, %3 into the day.</source>
        <translation>Die Luftfeuchte steigt von %1 auf %2, erreicht %3 nach Beginn.</translation>
    </message>
    <message>
        <source>All its vapour would fill %1 of bone-dry air.</source>
        <translation>Der ganze Dampf würde %1 völlig trockene Luft füllen.</translation>
    </message>
    <message>
        <source>If the most went on, %1 of exchange would level off beyond what air can hold: it would run down walls and windows.</source>
        <translation>Ginge der stärkste Dampf so weiter, pendelte sich die Luft bei %1 Austausch über dem ein, was sie halten kann: Wasser liefe an Wänden und Fenstern herab.</translation>
    </message>
    <message>
        <source>If the most went on, %1 of exchange would level off at %2.</source>
        <translation>Ginge der stärkste Dampf so weiter, pendelte sich die Luft bei %1 Austausch bei %2 ein.</translation>
    </message>
    <message>
        <source>The window&apos;s inner face is at %1: it stays dry.</source>
        <translation>Die Innenseite des Fensters hat %1: Sie bleibt trocken.</translation>
    </message>
    <message>
        <source>The window&apos;s inner face is at %1: wet from %2 into the day on.</source>
        <translation>Die Innenseite des Fensters hat %1: nass ab %2 nach Beginn.</translation>
    </message>
    <message>
        <source>No airflow holds %1: outdoors is no drier than that.</source>
        <translation>Kein Luftstrom hält %1: Draußen ist es nicht trockener.</translation>
    </message>
    <message>
        <source>%1 hold %2 while most vapour rises, %3 behind the hood.</source>
        <translation>%1 halten %2, während der meiste Dampf aufsteigt, %3 hinter der Haube.</translation>
    </message>
    <message>
        <source>%1 hold %2 while most vapour rises.</source>
        <translation>%1 halten %2, während der meiste Dampf aufsteigt.</translation>
    </message>
    <message>
        <source>Without any exchange the room is full after %1 of that.</source>
        <translation>Ohne jeden Austausch ist der Raum nach %1 davon voll.</translation>
    </message>
    <message>
        <source>vapour</source>
        <translation>Dampf</translation>
    </message>
    <message>
        <source>of it into the room</source>
        <translation>davon in den Raum</translation>
    </message>
    <message>
        <source>most vapour</source>
        <translation>stärkster Dampf</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>most heat</source>
        <translation>stärkste Wärme</translation>
    </message>
    <message>
        <source>highest humidity</source>
        <translation>höchste Feuchte</translation>
    </message>
    <message>
        <source>reached after</source>
        <translation>erreicht nach</translation>
    </message>
    <message>
        <source>full of vapour from</source>
        <translation>voller Dampf ab</translation>
    </message>
    <message>
        <source>condensed</source>
        <translation>kondensiert</translation>
    </message>
    <message>
        <source>would level off at, if the most went on</source>
        <translation>pendelte sich ein bei, ginge der stärkste Dampf so weiter</translation>
    </message>
    <message>
        <source>bone-dry air that the vapour would fill</source>
        <translation>völlig trockene Luft, die der Dampf füllen würde</translation>
    </message>
    <message>
        <source>window&apos;s inner face</source>
        <translation>Fenster innen</translation>
    </message>
    <message>
        <source>window wet from</source>
        <translation>Fenster nass ab</translation>
    </message>
    <message>
        <source>heat lost with the air</source>
        <translation>Wärme mit der Luft verloren</translation>
    </message>
    <message>
        <source>to hold %1</source>
        <translation>um %1 zu halten</translation>
    </message>
    <message>
        <source>behind the hood</source>
        <translation>hinter der Haube</translation>
    </message>
    <message>
        <source>closed room full after</source>
        <translation>geschlossener Raum voll nach</translation>
    </message>
    <message>
        <source>What others move, and is it enough?</source>
        <translation>Was andere bewegen, und reicht es?</translation>
    </message>
    <message>
        <source>%1: %2, too little for all [%3; %4]</source>
        <translation>%1: %2, zu wenig für alle [%3; %4]</translation>
    </message>
    <message>
        <source>%1: %2, enough for all [%3; %4]</source>
        <translation>%1: %2, genug für alle [%3; %4]</translation>
    </message>
    <message>
        <source>%1: %2, enough for %3, too little for %4 [%5; %6]</source>
        <translation>%1: %2, genug für %3, zu wenig für %4 [%5; %6]</translation>
    </message>
    <message>
        <source>Published airflows of kitchens beside the airflow that holds %1 while most vapour rises, for what the plan&apos;s hood leaves. They are made for cooking, not for a boil of hours.</source>
        <translation>Veröffentlichte Luftströme von Küchen neben dem Luftstrom, der %1 hält, während der meiste Dampf aufsteigt, für das, was die Haube des Plans übrig lässt. Sie sind für das Kochen von Essen gedacht, nicht für stundenlanges Sieden.</translation>
    </message>
    <message>
        <source>Published airflows of kitchens beside the airflow that holds %1 while most vapour rises, all of it mixed with the room&apos;s air; a hood over the kettle takes vapour before it mixes and can do with less: state what the hood captures. They are made for cooking, not for a boil of hours.</source>
        <translation>Veröffentlichte Luftströme von Küchen neben dem Luftstrom, der %1 hält, während der meiste Dampf aufsteigt, ganz mit der Raumluft vermischt; eine Haube über dem Kessel erfasst Dampf, ehe er sich mischt, und kommt mit weniger aus: Geben Sie an, was die Haube erfasst. Sie sind für das Kochen von Essen gedacht, nicht für stundenlanges Sieden.</translation>
    </message>
    <message>
        <source>Above %1 houses in North America need make-up air (International Residential Code; %2). A hood that gives its air back into the room removes no vapour.</source>
        <translation>Über %1 brauchen Häuser in Nordamerika Zuluft (International Residential Code; %2). Eine Haube, die ihre Luft in den Raum zurückgibt, nimmt keinen Dampf weg.</translation>
    </message>
    <message>
        <source>Time since the start</source>
        <translation>Zeit seit dem Beginn</translation>
    </message>
    <message>
        <source>full %1</source>
        <translation>voll %1</translation>
    </message>
    <message>
        <source>%1: %2, too little [%3; %4]</source>
        <translation>%1: %2, zu wenig [%3; %4]</translation>
    </message>
    <message>
        <source>%1: %2, enough [%3; %4]</source>
        <translation>%1: %2, genug [%3; %4]</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>By Heat Ledger %1, from %2.</source>
        <translation>Von Heat Ledger %1, aus %2.</translation>
    </message>
    <message>
        <source>By Heat Ledger %1, from %2, %3.</source>
        <translation>Von Heat Ledger %1, aus %2, %3.</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>mit %1</translation>
    </message>
    <message>
        <source>with changes that are not saved</source>
        <translation>mit Änderungen, die nicht gesichert sind</translation>
    </message>
    <message>
        <source>Circuit: %1 of %2: %3.</source>
        <translation>Stromkreis: %1 von %2: %3.</translation>
    </message>
    <message>
        <source>Second circuit: %1 of %2: %3.</source>
        <translation>Zweiter Stromkreis: %1 von %2: %3.</translation>
    </message>
    <message>
        <source>This day stops before its end: do not brew by it as it is.</source>
        <translation>Dieser Tag endet vorzeitig: Brauen Sie nicht danach, wie er ist.</translation>
    </message>
    <message>
        <source>Whether it rolls or only steams nobody can say.</source>
        <translation>Ob es wallt oder nur dampft, kann niemand sagen.</translation>
    </message>
    <message>
        <source>for that energy</source>
        <translation>für diese Energie</translation>
    </message>
    <message>
        <source>for that energy, at %1/kWh</source>
        <translation>für diese Energie, zu %1/kWh</translation>
    </message>
    <message>
        <source>at the meter, from begin to end</source>
        <translation>am Zähler, von Anfang bis Ende</translation>
    </message>
    <message>
        <source>at the meter by then</source>
        <translation>am Zähler bis dahin</translation>
    </message>
    <message>
        <source>in the end, cold, at %1</source>
        <translation>am Ende, kalt, mit %1</translation>
    </message>
    <message>
        <source>in the end, cold</source>
        <translation>am Ende, kalt</translation>
    </message>
    <message>
        <source>of steam: open a window</source>
        <translation>Dampf: ein Fenster öffnen</translation>
    </message>
    <message>
        <source>Next day</source>
        <translation>Am nächsten Tag</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>gravity</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>%1 cold, %2 hot</source>
        <translation>%1 kalt, %2 heiß</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>auf %1</translation>
    </message>
    <message>
        <source>Element off. Grain in, %1</source>
        <translation>Heizelement aus. Malz hinein, %1</translation>
    </message>
    <message>
        <source>stir it in, lid off</source>
        <translation>einrühren, Deckel ab</translation>
    </message>
    <message>
        <source>stir it in</source>
        <translation>einrühren</translation>
    </message>
    <message>
        <source>settles at %1</source>
        <translation>stellt sich auf %1 ein</translation>
    </message>
    <message>
        <source>Heat to %1</source>
        <translation>Auf %1 heizen</translation>
    </message>
    <message>
        <source>takes %1</source>
        <translation>dauert %1</translation>
    </message>
    <message>
        <source>Hold %1 for %2</source>
        <translation>%1 für %2 halten</translation>
    </message>
    <message>
        <source>Lid on, unplug</source>
        <translation>Deckel auflegen, Stecker ziehen</translation>
    </message>
    <message>
        <source>Unplug</source>
        <translation>Stecker ziehen</translation>
    </message>
    <message>
        <source>leave it alone for %1</source>
        <translation>%1 stehen lassen</translation>
    </message>
    <message>
        <source>Read the mash</source>
        <translation>Maische ablesen</translation>
    </message>
    <message>
        <source>Read the mash if you are awake: the later, the more it tells of the end</source>
        <translation>Maische ablesen, falls jemand wach ist: je später, desto mehr sagt es über das Ende</translation>
    </message>
    <message>
        <source>Lift the grain, plug in, full power</source>
        <translation>Malz heben, Stecker hinein, volle Leistung</translation>
    </message>
    <message>
        <source>Lift the grain, full power</source>
        <translation>Malz heben, volle Leistung</translation>
    </message>
    <message>
        <source>It was below %1 for %2: boil it at once.</source>
        <translation>Sie war %2 unter %1: sofort kochen.</translation>
    </message>
    <message>
        <source>It rolls</source>
        <translation>Es wallt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>lid on</source>
        <translation>Deckel aufgelegt</translation>
    </message>
    <message>
        <source>lid off</source>
        <translation>Deckel ab</translation>
    </message>
    <message>
        <source>lid open by %1</source>
        <translation>Deckel um %1 offen</translation>
    </message>
    <message>
        <source>turn down to %1 of the power</source>
        <translation>auf %1 der Leistung herunterdrehen</translation>
    </message>
    <message>
        <source>stay: foam rises fast</source>
        <translation>dabeibleiben: Schaum steigt schnell</translation>
    </message>
    <message>
        <source>%1 boil off</source>
        <translation>%1 verdampfen</translation>
    </message>
    <message>
        <source>Element off</source>
        <translation>Heizelement aus</translation>
    </message>
    <message>
        <source>unplug</source>
        <translation>Stecker ziehen</translation>
    </message>
    <message>
        <source>The day stops here</source>
        <translation>Der Tag endet hier</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>full power</source>
        <translation>volle Leistung</translation>
    </message>
    <message>
        <source>stay with it, and open the lid before it rolls</source>
        <translation>dabeibleiben und den Deckel öffnen, bevor es wallt</translation>
    </message>
    <message>
        <source>stay with it</source>
        <translation>dabeibleiben</translation>
    </message>
    <message>
        <source>pump on</source>
        <translation>Pumpe an</translation>
    </message>
    <message>
        <source>%1 stay empty at the fullest: reduce power before the boil and at additions.</source>
        <translation>Freiraum im vollsten Augenblick: %1. Vor dem Kochen und bei Gaben die Leistung senken.</translation>
    </message>
    <message>
        <source>The kettle weighs up to %1: do not carry hot liquid; let it run, pump or siphon.</source>
        <translation>Der Kessel wiegt bis zu %1: Heißes nicht tragen; laufen lassen, pumpen oder hebern.</translation>
    </message>
    <message>
        <source>Always boil after a luke-warm hold, and do not count on the boil to undo many warm hours.</source>
        <translation>Nach einer lauwarmen Zeit immer kochen, und nicht darauf bauen, dass das Kochen viele warme Stunden ungeschehen macht.</translation>
    </message>
    <message>
        <source>Vents, drains and lids stay open while it heats.</source>
        <translation>Entlüftung, Ablauf und Deckel bleiben beim Heizen offen.</translation>
    </message>
    <message>
        <source>No hours after the boil are counted here: cool quickly and pitch promptly.</source>
        <translation>Stunden nach dem Kochen sind hier nicht gezählt: schnell kühlen und bald anstellen.</translation>
    </message>
    <message>
        <source>Before anything else</source>
        <translation>Vor allem anderen</translation>
    </message>
    <message>
        <source>The day by the clock</source>
        <translation>Der Tag nach der Uhr</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Write in</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>%1 done: %2</source>
        <translation>%1 erledigt: %2</translation>
    </message>
    <message>
        <source>Switch off before draining or transferring: %1 cover the element, and %2 are left at the least.</source>
        <translation>Vor dem Ablassen und Umfüllen ausschalten: %1 bedecken das Heizelement, und mindestens %2 bleiben.</translation>
    </message>
    <message>
        <source>Heat %1 of water from %2</source>
        <translation>%1 Wasser von %2 heizen</translation>
    </message>
    <message>
        <source>Under a time, and between brackets: there 8 of 10 such days lie.</source>
        <translation>Unter einer Zeit und in Klammern: dort liegen 8 von 10 solchen Tagen.</translation>
    </message>
    <message>
        <source>Perhaps it rolls: its clock begins</source>
        <translation>Vielleicht wallt es: die Kochzeit beginnt</translation>
    </message>
    <message>
        <source>It steams and does not roll: its clock begins</source>
        <translation>Es dampft und wallt nicht: die Kochzeit beginnt</translation>
    </message>
    <message>
        <source>It boils and cannot hold it: its clock begins</source>
        <translation>Es kocht und kann es nicht halten: die Kochzeit beginnt</translation>
    </message>
    <message>
        <source>It does not boil: its clock begins</source>
        <translation>Es kocht nicht: die Kochzeit beginnt</translation>
    </message>
    <message>
        <source>Water on; run it through the chiller</source>
        <translation>Wasser an; durch den Kühler laufen lassen</translation>
    </message>
    <message>
        <source>Let it cool</source>
        <translation>Abkühlen lassen</translation>
    </message>
    <message>
        <source>Coil in, water on; stir all the time</source>
        <translation>Spirale hinein, Wasser an; ständig rühren</translation>
    </message>
    <message>
        <source>Coil in, water on</source>
        <translation>Spirale hinein, Wasser an</translation>
    </message>
    <message>
        <source>hoses fastened first: the water leaves scalding</source>
        <translation>zuerst die Schläuche befestigen: das Wasser kommt kochend heiß heraus</translation>
    </message>
    <message>
        <source>jacket off, lid loose: never closed</source>
        <translation>Hülle ab, Deckel lose: nie verschlossen</translation>
    </message>
    <message>
        <source>lid loose: never closed</source>
        <translation>Deckel lose: nie verschlossen</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 auf %2</translation>
    </message>
    <message>
        <source>or as late as %1: still wort chills as it will</source>
        <translation>oder erst um %1: ruhende Würze kühlt, wie sie will</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Anstellen</translation>
    </message>
    <message>
        <source>Water does no more: ice round the kettle, to %1; then pitch</source>
        <translation>Mehr schafft das Wasser nicht: Eis um den Kessel, bis %1; dann anstellen</translation>
    </message>
    <message>
        <source>All of it is through, and too warm to pitch: once more, slower</source>
        <translation>Alles ist durch und zu warm zum Anstellen: noch einmal, langsamer</translation>
    </message>
    <message>
        <source>Begin, and stay with it</source>
        <translation>Beginnen und dabeibleiben</translation>
    </message>
    <message>
        <source>then %1; for 9 of 10 such days begin by %2</source>
        <translation>%1; für 9 von 10 solchen Tagen Beginn bis %2</translation>
    </message>
    <message>
        <source>then %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>In goes %1</source>
        <translation>Hinein: %1</translation>
    </message>
    <message>
        <source>element off first, slowly, stir till it is dissolved, on again: it foams and splashes</source>
        <translation>erst Heizstab aus, langsam, rühren, bis es gelöst ist, wieder an: es schäumt und spritzt</translation>
    </message>
    <message>
        <source>slowly, and stir: it foams and splashes</source>
        <translation>langsam, und umrühren: es schäumt und spritzt</translation>
    </message>
    <message>
        <source>element off first, slowly, on again: it foams and splashes</source>
        <translation>erst Heizstab aus, langsam, wieder an: es schäumt und spritzt</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>Lift the grain, element on</source>
        <translation>Malz herausheben, Heizelement an</translation>
    </message>
    <message>
        <source>Element off. Lift the grain</source>
        <translation>Heizelement aus. Malz herausheben</translation>
    </message>
    <message>
        <source>gloves, nobody under it; look that the element stays covered</source>
        <translation>Handschuhe, niemand darunter; darauf achten, dass das Heizelement bedeckt bleibt</translation>
    </message>
    <message>
        <source>gloves, nobody under it: it drips scalding wort</source>
        <translation>Handschuhe, niemand darunter: Es tropft brühheiße Würze</translation>
    </message>
    <message>
        <source>Rinse with %1</source>
        <translation>Abspülen mit %1</translation>
    </message>
    <message>
        <source>slowly and all over, from a small jug</source>
        <translation>langsam und überall, aus einer kleinen Kanne</translation>
    </message>
    <message>
        <source>Let it drain for %1</source>
        <translation>%1 abtropfen lassen</translation>
    </message>
    <message>
        <source>full power, stay with it</source>
        <translation>volle Leistung, dabeibleiben</translation>
    </message>
    <message>
        <source>hung safely, element off</source>
        <translation>sicher aufgehängt, Heizelement aus</translation>
    </message>
    <message>
        <source>Heat the rinsing water, %1</source>
        <translation>Nachgusswasser erhitzen, %1</translation>
    </message>
    <message>
        <source>only as the circuit&apos;s verdict allows; ready at the lift</source>
        <translation>nur wie das Urteil über den Stromkreis es erlaubt; zum Herausheben fertig</translation>
    </message>
    <message>
        <source>ready at the lift</source>
        <translation>zum Herausheben fertig</translation>
    </message>
    <message>
        <source>Take the grain away, full power</source>
        <translation>Malz wegnehmen, volle Leistung</translation>
    </message>
    <message>
        <source>of that for the rinsing water, beside the kettle</source>
        <translation>davon für das Nachgusswasser, neben dem Kessel</translation>
    </message>
</context>
<context>
    <name>Start</name>
    <message>
        <source>%1, %2 industrial socket</source>
        <translation>Industriesteckdose %1, %2</translation>
    </message>
    <message>
        <source>%1, %2 wall socket</source>
        <translation>Steckdose %1, %2</translation>
    </message>
    <message>
        <source>%1, %2 circuit</source>
        <translation>Stromkreis %1, %2</translation>
    </message>
    <message>
        <source>After the move</source>
        <translation>Nach dem Umzug</translation>
    </message>
    <message>
        <source>A 230 V kettle in a flat with 120 V and 208 V: the old element, a new one, a jacket, or the laundry&apos;s circuit?</source>
        <translation>Ein Kessel für 230 V in einer Wohnung mit 120 V und 208 V: das alte Heizelement, ein neues, ein Mantel oder der Stromkreis der Waschküche?</translation>
    </message>
    <message>
        <source>One kettle</source>
        <translation>Ein Kessel</translation>
    </message>
    <message>
        <source>A bare kettle of 45 L with 2.2 kW: how long it takes, and what it boils off.</source>
        <translation>Ein blanker Kessel von 45 L mit 2,2 kW: wie lange er braucht und was er verdampft.</translation>
    </message>
    <message>
        <source>A night unplugged</source>
        <translation>Eine Nacht ohne Strom</translation>
    </message>
    <message>
        <source>A dark lager mashed in the evening and left until seven: how warm is it then, with a jacket and without?</source>
        <translation>Ein dunkles Lagerbier, abends eingemaischt und bis sieben Uhr sich selbst überlassen: wie warm ist es dann, mit Mantel und ohne?</translation>
    </message>
    <message>
        <source>120 V or 240 V</source>
        <translation>120 V oder 240 V</translation>
    </message>
    <message>
        <source>The same kettle on a wall outlet and on a circuit of 240 V: how much sooner does it boil, and at what price?</source>
        <translation>Derselbe Kessel an einer Steckdose von 120 V und an einem Stromkreis von 240 V: wie viel früher kocht er, und zu welchem Preis?</translation>
    </message>
    <message>
        <source>240 V at home, 208 V in the hall</source>
        <translation>240 V zu Hause, 208 V im Saal</translation>
    </message>
    <message>
        <source>What an element written for 240 V is worth on 208 V, and one made for it.</source>
        <translation>Was ein Heizelement für 240 V an 208 V wert ist, und eines, das dafür gebaut ist.</translation>
    </message>
    <message>
        <source>Two elements on two circuits</source>
        <translation>Zwei Heizelemente an zwei Stromkreisen</translation>
    </message>
    <message>
        <source>Twice 2 kW on two circuits of 16 A, against one element on one of them.</source>
        <translation>Zweimal 2 kW an zwei Stromkreisen von 16 A, verglichen mit einem Heizelement an einem davon.</translation>
    </message>
    <message>
        <source>A large batch</source>
        <translation>Ein großer Sud</translation>
    </message>
    <message>
        <source>48 L of stout for a feast: what time, current and vapour does the size ask for?</source>
        <translation>48 L Stout für ein Fest: welche Zeit, welchen Strom und welchen Dampf verlangt die Größe?</translation>
    </message>
    <message>
        <source>A large batch at altitude</source>
        <translation>Ein großer Sud in der Höhe</translation>
    </message>
    <message>
        <source>45 L of wheat beer at 2240 m, on 220 V: is an element made for that voltage worth it?</source>
        <translation>45 L Weizenbier auf 2240 m, an 220 V: lohnt sich ein Heizelement für diese Spannung?</translation>
    </message>
    <message>
        <source>A kettle that hardly boils</source>
        <translation>Ein Kessel, der kaum kocht</translation>
    </message>
    <message>
        <source>1.3 kW under an open pot, where nobody can say whether it rolls; half a lid settles it.</source>
        <translation>1,3 kW unter einem offenen Topf, bei dem niemand sagen kann, ob er wallt; ein halber Deckel entscheidet es.</translation>
    </message>
    <message>
        <source>My kettle</source>
        <translation>Mein Kessel</translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message>
        <source>Mains current and boiling wort can kill.</source>
        <translation>Netzstrom und kochende Würze können töten.</translation>
    </message>
    <message>
        <source>Have a licensed electrician check; local codes decide.</source>
        <translation>Lassen Sie eine Elektrofachkraft prüfen; es entscheiden die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>%1 asks more of its circuit than that is rated for.</source>
        <translation>%1 verlangt mehr, als ihr Stromkreis trägt.</translation>
    </message>
    <message>
        <source>%1 ask more of their circuits than those are rated for.</source>
        <translation>%1 verlangen mehr, als ihre Stromkreise tragen.</translation>
    </message>
    <message>
        <source>%1 is below %2 for %3 of its rest: boil it promptly.</source>
        <translation>%1 steht %3 ihrer Rast unter %2: sofort kochen.</translation>
    </message>
</context>
<context>
    <name>Sure</name>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>The boil begins between %1 and %2, on 1 day in 10 before and on 1 in 10 after.</source>
        <translation>Das Kochen beginnt zwischen %1 und %2, an 1 von 10 Tagen davor und an 1 von 10 danach.</translation>
    </message>
    <message>
        <source>The day is over between %1 and %2, boiling or not.</source>
        <translation>Der Tag ist zwischen %1 und %2 vorbei, ob es kocht oder nicht.</translation>
    </message>
    <message>
        <source>In the morning the mash has %1.</source>
        <translation>Am Morgen hat die Maische %1.</translation>
    </message>
    <message>
        <source>It takes %1 from the wall.</source>
        <translation>Aus der Steckdose kommen %1.</translation>
    </message>
    <message>
        <source>It takes %1 from the wall, for %2 to %3.</source>
        <translation>Aus der Steckdose kommen %1, für %2 bis %3.</translation>
    </message>
    <message>
        <source>It %1.</source>
        <translation>Er %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>When the boil begins hangs on %1.</source>
        <translation>Wann das Kochen beginnt, hängt ab von: %1.</translation>
    </message>
    <message>
        <source>What it would take to roll hangs on %1.</source>
        <translation>Was wallendes Kochen bräuchte, hängt ab von: %1.</translation>
    </message>
    <message>
        <source>How warm the morning is hangs on %1.</source>
        <translation>Wie warm es am Morgen ist, hängt ab von: %1.</translation>
    </message>
    <message>
        <source>How much boils off hangs on %1.</source>
        <translation>Wie viel verkocht, hängt ab von: %1.</translation>
    </message>
    <message>
        <source>What it takes from the wall hangs on %1.</source>
        <translation>Was aus der Steckdose kommt, hängt ab von: %1.</translation>
    </message>
    <message>
        <source>What the kettle loses: leave it full and hot with its lid on and its element off, and read it at once and some hours later.</source>
        <translation>Was der Kessel verliert: Lassen Sie ihn voll und heiß mit Deckel und ohne Heizung stehen und lesen Sie gleich und einige Stunden später ab.</translation>
    </message>
    <message>
        <source>What the open surface gives off: time the open kettle from 80 °C to the boil, once its power is known.</source>
        <translation>Was die offene Oberfläche abgibt: Stoppen Sie die Zeit des offenen Kessels von 80 °C bis zum Kochen, sobald seine Leistung bekannt ist.</translation>
    </message>
    <message>
        <source>What is poured: weigh the water, or count jugs that were weighed.</source>
        <translation>Was eingefüllt wird: Wiegen Sie das Wasser oder zählen Sie gewogene Krüge.</translation>
    </message>
    <message>
        <source>What the element delivers: have the voltage measured at the plug while it is on, or read an energy meter over a quarter of an hour.</source>
        <translation>Was das Heizelement liefert: Lassen Sie die Spannung am Stecker messen, während es heizt, oder lesen Sie einen Energiezähler über eine Viertelstunde ab.</translation>
    </message>
    <message>
        <source>The room: hang a thermometer beside the kettle.</source>
        <translation>Der Raum: Hängen Sie ein Thermometer neben den Kessel.</translation>
    </message>
    <message>
        <source>The water: measure it in the kettle before the element is on, with a thermometer that reads 0 °C in melting ice.</source>
        <translation>Das Wasser: Messen Sie es im Kessel, bevor das Heizelement an ist, mit einem Thermometer, das in schmelzendem Eis 0 °C zeigt.</translation>
    </message>
    <message>
        <source>The lid: look how it lies on its rim, and state its gap.</source>
        <translation>Der Deckel: Sehen Sie nach, wie er auf dem Rand liegt, und geben Sie seinen Spalt an.</translation>
    </message>
    <message>
        <source>What the grain keeps: weigh it before and after it has drained.</source>
        <translation>Was das Malz zurückhält: Wiegen Sie es trocken und nach dem Abtropfen.</translation>
    </message>
    <message>
        <source>To know it better</source>
        <translation>Um es besser zu wissen</translation>
    </message>
    <message>
        <source>Of each rig the same day was simulated %1 times, each time with other values of what nobody knows exactly beforehand. 1 day in 10 lies below the lower figure and 1 in 10 above the upper; a day that does not roll stays among them.</source>
        <translation>Von jeder Anlage wurde derselbe Tag %1-mal berechnet, jedes Mal mit anderen Werten dessen, was niemand vorher genau weiß. 1 von 10 Tagen liegt unter der unteren Zahl und 1 von 10 über der oberen; ein Tag, der nicht wallend kocht, bleibt dabei.</translation>
    </message>
    <message>
        <source>The middle is not the plan&apos;s own day: elements deliver rather less than their plates say, and a bare kettle loses rather more than computed.</source>
        <translation>Die Mitte ist nicht der Tag des Plans: Heizelemente liefern eher weniger, als ihr Schild sagt, und ein blanker Kessel verliert eher mehr als berechnet.</translation>
    </message>
    <message>
        <source>A share in brackets is what would be left of the variance if all else were known. What no share tells is a plan that is wrong: another lid, another volume.</source>
        <translation>Ein Anteil in Klammern ist, was von der Varianz bliebe, wenn alles andere bekannt wäre. Was kein Anteil sagt, ist ein falscher Plan: ein anderer Deckel, eine andere Menge.</translation>
    </message>
    <message>
        <source>rolls on every such day</source>
        <translation>kocht an jedem solchen Tag wallend</translation>
    </message>
    <message>
        <source>rolls on no such day</source>
        <translation>kocht an keinem solchen Tag wallend</translation>
    </message>
    <message>
        <source>rolls on more than 19 of 20 such days</source>
        <translation>kocht an mehr als 19 von 20 solchen Tagen wallend</translation>
    </message>
    <message>
        <source>rolls on fewer than 1 of 20 such days</source>
        <translation>kocht an weniger als 1 von 20 solchen Tagen wallend</translation>
    </message>
    <message>
        <source>rolls on %1 of 20 such days</source>
        <translation>kocht an %1 von 20 solchen Tagen wallend</translation>
    </message>
    <message>
        <source>what walls, lid and base lose</source>
        <translation>was Wände, Deckel und Boden verlieren</translation>
    </message>
    <message>
        <source>what the open surface gives off</source>
        <translation>was die offene Oberfläche abgibt</translation>
    </message>
    <message>
        <source>what is poured</source>
        <translation>was eingefüllt wird</translation>
    </message>
    <message>
        <source>what the element delivers</source>
        <translation>was das Heizelement liefert</translation>
    </message>
    <message>
        <source>the room</source>
        <translation>der Raum</translation>
    </message>
    <message>
        <source>the water as drawn</source>
        <translation>das Leitungswasser</translation>
    </message>
    <message>
        <source>how the lid fits</source>
        <translation>wie der Deckel schließt</translation>
    </message>
    <message>
        <source>what the grain keeps</source>
        <translation>was das Malz zurückhält</translation>
    </message>
    <message>
        <source>What makes it wide</source>
        <translation>Woran es liegt</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Kocht wallend</translation>
    </message>
    <message>
        <source>share of such days, %</source>
        <translation>Anteil solcher Tage, %</translation>
    </message>
    <message>
        <source>1 day in 10 before</source>
        <translation>1 von 10 Tagen davor</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>1 day in 10 after</source>
        <translation>1 von 10 Tagen danach</translation>
    </message>
    <message>
        <source>1 day in 10 below</source>
        <translation>1 von 10 Tagen darunter</translation>
    </message>
    <message>
        <source>1 day in 10 above</source>
        <translation>1 von 10 Tagen darüber</translation>
    </message>
    <message>
        <source>not at all</source>
        <translation>gar nicht</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>boil</source>
        <translation>Kochen</translation>
    </message>
    <message>
        <source>over</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>boil-off</source>
        <translation>verkocht</translation>
    </message>
    <message>
        <source>wort</source>
        <translation>Würze</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>morning</source>
        <translation>Morgen</translation>
    </message>
    <message>
        <source>Strike water ready</source>
        <translation>Einmaischwasser fertig</translation>
    </message>
    <message>
        <source>Boil begins</source>
        <translation>Kochen beginnt</translation>
    </message>
    <message>
        <source>Day is over</source>
        <translation>Tag ist vorbei</translation>
    </message>
    <message>
        <source>Boils off</source>
        <translation>Verkocht</translation>
    </message>
    <message>
        <source>Wort in the end, cold</source>
        <translation>Würze am Ende, kalt</translation>
    </message>
    <message>
        <source>The mash in the morning</source>
        <translation>Die Maische am Morgen</translation>
    </message>
    <message>
        <source>Least heat that rolls</source>
        <translation>Mindestwärme für wallendes Kochen</translation>
    </message>
    <message>
        <source>From the wall</source>
        <translation>Aus der Steckdose</translation>
    </message>
    <message>
        <source>A batch costs</source>
        <translation>Ein Sud kostet</translation>
    </message>
    <message>
        <source>How much of the width hangs on it, %</source>
        <translation>Wie viel der Streuung daran liegt, %</translation>
    </message>
    <message>
        <source>1 day in 10 is cooler</source>
        <translation>1 von 10 Tagen ist kühler</translation>
    </message>
    <message>
        <source>1 day in 10 is warmer</source>
        <translation>1 von 10 Tagen ist wärmer</translation>
    </message>
    <message>
        <source>Known exactly, it would make the band of the boil&apos;s beginning %1 narrower.</source>
        <translation>Genau bekannt, würde die Spanne für den Beginn des Kochens um %1 enger.</translation>
    </message>
    <message>
        <source>Known exactly, it would make the band of the least that rolls %1 narrower.</source>
        <translation>Genau bekannt, würde die Spanne der Mindestwärme um %1 enger.</translation>
    </message>
    <message>
        <source>The boil begins before %1 on 1 day in 10 and before %2 on half of them, and on more than 1 in 10 not at all.</source>
        <translation>Das Kochen beginnt an 1 von 10 Tagen vor %1, an der Hälfte vor %2 und an mehr als 1 von 10 gar nicht.</translation>
    </message>
    <message>
        <source>The boil begins before %1 on 1 day in 10, and on more than half of them not at all.</source>
        <translation>Das Kochen beginnt an 1 von 10 Tagen vor %1 und an mehr als der Hälfte gar nicht.</translation>
    </message>
    <message>
        <source>%1 of 20 such days roll with %2.</source>
        <translation>An %1 von 20 solchen Tagen kocht %2 wallend.</translation>
    </message>
    <message>
        <source>Temperature of %1: 8 of 10 such days lie in the wash</source>
        <translation>Temperatur von %1: 8 von 10 solchen Tagen liegen in der Fläche</translation>
    </message>
</context>
<context>
    <name>Sweep</name>
    <message>
        <source>%1 is no number</source>
        <translation>%1 ist keine Zahl</translation>
    </message>
    <message>
        <source>a step of %1 leads nowhere</source>
        <translation>ein Schritt von %1 führt nirgendwohin</translation>
    </message>
    <message>
        <source>%1 is no place of a plan</source>
        <translation>%1 ist keine Stelle eines Plans</translation>
    </message>
    <message>
        <source>a plan has no key %1</source>
        <translation>ein Plan hat keinen Schlüssel %1</translation>
    </message>
    <message>
        <source>%1 has no key %2</source>
        <translation>%1 hat keinen Schlüssel %2</translation>
    </message>
    <message>
        <source>it may have %1</source>
        <translation>möglich ist %1</translation>
    </message>
    <message>
        <source>this plan states no entries of %1</source>
        <translation>dieser Plan nennt keine Einträge von %1</translation>
    </message>
    <message>
        <source>this plan has no rig %1; a letter of its rigs, a number from 0 to %2, or &quot;*&quot; for all of them is accepted, e.g. &quot;rigs/%3&quot;</source>
        <translation>dieser Plan hat keine Anlage %1; angenommen wird ein Buchstabe seiner Anlagen, eine Zahl von 0 bis %2 oder &quot;*&quot; für alle, z. B. &quot;rigs/%3&quot;</translation>
    </message>
    <message>
        <source>%1 has no entry %2; a number from 0 to %3, or &quot;*&quot; for all of them is accepted</source>
        <translation>%1 hat keinen Eintrag %2; angenommen wird eine Zahl von 0 bis %3 oder &quot;*&quot; für alle</translation>
    </message>
    <message>
        <source>%1 is a remark: nothing depends on it</source>
        <translation>%1 ist eine Anmerkung: Nichts hängt davon ab</translation>
    </message>
    <message>
        <source>%1 has keys of its own; vary one of them</source>
        <translation>%1 hat eigene Schlüssel; verändern Sie einen davon</translation>
    </message>
    <message>
        <source>no values are given; write them behind &quot;=&quot;, e.g. %1</source>
        <translation>es sind keine Werte angegeben; schreiben Sie sie hinter &quot;=&quot;, z. B. %1</translation>
    </message>
    <message>
        <source>a value is missing between two signs that part them</source>
        <translation>zwischen zwei Trennzeichen fehlt ein Wert</translation>
    </message>
    <message>
        <source>values are parted by &quot;; &quot;, or by a comma with a space behind it</source>
        <translation>Werte trennt &quot;; &quot; oder ein Komma mit einem Leerzeichen dahinter</translation>
    </message>
    <message>
        <source>%1 is a range that lacks an end; both are needed</source>
        <translation>%1 ist ein Bereich, dem ein Ende fehlt; es braucht beide</translation>
    </message>
    <message>
        <source>%1 does not say how many values it has; write e.g. &quot;%2..%3 in 5&quot; for five of them evenly apart</source>
        <translation>%1 sagt nicht, wie viele Werte es sind; schreiben Sie z. B. &quot;%2..%3 in 5&quot; für fünf davon in gleichem Abstand</translation>
    </message>
    <message>
        <source>%1: behind &quot;in&quot; a whole number of values from 2 on is needed</source>
        <translation>%1: Hinter &quot;in&quot; gehört eine ganze Zahl von Werten, mindestens 2</translation>
    </message>
    <message>
        <source>%1 has values between whole numbers; choose a step with &quot;by&quot;</source>
        <translation>%1 hat Werte zwischen ganzen Zahlen; wählen Sie mit &quot;by&quot; einen Schritt</translation>
    </message>
    <message>
        <source>%1 has too many values to be counted</source>
        <translation>%1 hat zu viele Werte, um sie zu zählen</translation>
    </message>
    <message>
        <source>in this plan no value can stand there, as something else stands on the way</source>
        <translation>in diesem Plan kann dort kein Wert stehen, da auf dem Weg dorthin etwas anderes steht</translation>
    </message>
    <message>
        <source>%1 was given; a key of the plan and its values are needed, e.g. &quot;batch/boil=45 min, 60 min&quot;</source>
        <translation>%1 wurde angegeben; nötig sind ein Schlüssel des Plans und seine Werte, z. B. &quot;batch/boil=45 min, 60 min&quot;</translation>
    </message>
    <message>
        <source>%1 is varied already</source>
        <translation>%1 wird schon verändert</translation>
    </message>
    <message>
        <source>write all of its values behind one &quot;--vary&quot;</source>
        <translation>schreiben Sie alle seine Werte hinter ein einziges &quot;--vary&quot;</translation>
    </message>
    <message>
        <source>%1 is no figure of a result</source>
        <translation>%1 ist keine Zahl eines Ergebnisses</translation>
    </message>
    <message>
        <source>&quot;heatledger schema result&quot; has all of them, below &quot;rig&quot;</source>
        <translation>&quot;heatledger schema result&quot; nennt alle, unter &quot;rig&quot;</translation>
    </message>
    <message>
        <source>no figure is named; e.g. &quot;cost, day/duration_s&quot;</source>
        <translation>es ist keine Zahl genannt; z. B. &quot;cost, day/duration_s&quot;</translation>
    </message>
    <message>
        <source>%1 was given; a whole number of combinations is needed</source>
        <translation>%1 wurde angegeben; nötig ist eine ganze Zahl von Kombinationen</translation>
    </message>
    <message>
        <source>these are about %1 combinations, too many for any computer; take fewer values</source>
        <translation>das sind etwa %1 Kombinationen, zu viele für jeden Rechner; nehmen Sie weniger Werte</translation>
    </message>
    <message>
        <source>these are %1 combinations, and not more than %2 are begun; take fewer values, or say &quot;--at-most %1&quot;</source>
        <translation>das sind %1 Kombinationen, und mehr als %2 werden nicht begonnen; nehmen Sie weniger Werte, oder sagen Sie &quot;--at-most %1&quot;</translation>
    </message>
    <message>
        <source>%1 of %2 combinations</source>
        <translation>%1 von %2 Kombinationen</translation>
    </message>
    <message>
        <source>%1 of %2 combinations are no plan, and their rows say why. The first: %3.</source>
        <translation>%1 von %2 Kombinationen sind kein Plan; ihre Zeilen sagen, warum. Die erste: %3.</translation>
    </message>
    <message>
        <source>stopped: %1 of %2 combinations are there, the first ones.</source>
        <translation>angehalten: Die ersten %1 von %2 Kombinationen stehen da.</translation>
    </message>
</context>
<context>
    <name>Tariff</name>
    <message>
        <source>%1 %2 per kWh</source>
        <translation>%1 %2 je kWh</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 bis %3</translation>
    </message>
    <message>
        <source>at a weekend: %1</source>
        <translation>am Wochenende: %1</translation>
    </message>
    <message>
        <source>on a weekday: %1</source>
        <translation>an einem Werktag: %1</translation>
    </message>
    <message>
        <source>%1 up to %2 a month</source>
        <translation>%1 bis %2 im Monat</translation>
    </message>
    <message>
        <source>%1 above</source>
        <translation>%1 darüber</translation>
    </message>
    <message>
        <source>%1; %2 used this month before</source>
        <translation>%1; %2 in diesem Monat schon verbraucht</translation>
    </message>
    <message>
        <source>no price stated</source>
        <translation>kein Preis angegeben</translation>
    </message>
    <message>
        <source>%1; %2 of the sum not paid</source>
        <translation>%1; %2 der Summe nicht bezahlt</translation>
    </message>
    <message>
        <source>%1, as of %2</source>
        <translation>%1, Stand %2</translation>
    </message>
    <message>
        <source>%2%1 per kWh</source>
        <translation>%1 %2 je kWh</translation>
    </message>
    <message>
        <source>%1; %2 on top of the sum</source>
        <translation>%1; %2 Aufschlag auf die Summe</translation>
    </message>
    <message>
        <source>No price is stated.</source>
        <translation>Es ist kein Preis angegeben.</translation>
    </message>
    <message>
        <source>On a weekday %1. At a weekend %2.</source>
        <translation>An einem Werktag %1. Am Wochenende %2.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>The prices are those of %1.</source>
        <translation>Die Preise sind die von %1.</translation>
    </message>
    <message>
        <source>Source of the prices: %1.</source>
        <translation>Quelle der Preise: %1.</translation>
    </message>
    <message>
        <source>Source of the prices: %1 (%2).</source>
        <translation>Quelle der Preise: %1 (%2).</translation>
    </message>
    <message>
        <source>The prices are those of %1: %2.</source>
        <translation>Die Preise sind die von %1: %2.</translation>
    </message>
    <message>
        <source>The prices are those of %1: %2 (%3).</source>
        <translation>Die Preise sind die von %1: %2 (%3).</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>Schätzung</translation>
    </message>
</context>
<context>
    <name>Terminal</name>
    <message>
        <source>&quot;%1&quot; needs the name of a file to write, for example &quot;--to %2&quot;.</source>
        <translation>&quot;%1&quot; braucht den Namen einer Datei, die geschrieben wird, zum Beispiel &quot;--to %2&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs the name of a file, for example &quot;heatledger %1 my-plan.json&quot;.</source>
        <translation>&quot;%1&quot; braucht den Namen einer Datei, zum Beispiel &quot;heatledger %1 my-plan.json&quot;.</translation>
    </message>
    <message>
        <source>&quot;heatledger %1 --help&quot; shows its options.</source>
        <translation>&quot;heatledger %1 --help&quot; zeigt seine Optionen.</translation>
    </message>
    <message>
        <source>&quot;heatledger --help&quot; shows the commands.</source>
        <translation>&quot;heatledger --help&quot; zeigt die Befehle.</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <translation>%1 (%2): %3</translation>
    </message>
    <message>
        <source>%1 is no command.</source>
        <translation>%1 ist kein Befehl.</translation>
    </message>
    <message>
        <source>%1 is no command; for a plan, type: heatledger answer %2</source>
        <translation>%1 ist kein Befehl; für einen Plan geben Sie ein: heatledger answer %2</translation>
    </message>
    <message>
        <source>%1 is nothing that &quot;%2&quot; knows.</source>
        <translation>%1 kennt &quot;%2&quot; nicht.</translation>
    </message>
    <message>
        <source>%1 is there already; nothing was written.</source>
        <translation>%1 ist schon da; es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>%1 needs a value after it.</source>
        <translation>%1 braucht einen Wert dahinter.</translation>
    </message>
    <message>
        <source>%1 of carbon dioxide per kWh: %2.</source>
        <translation>%1 Kohlendioxid je kWh: %2.</translation>
    </message>
    <message>
        <source>%1 problems</source>
        <translation>%1 Probleme</translation>
    </message>
    <message>
        <source>%1 remarks</source>
        <translation>%1 Hinweise</translation>
    </message>
    <message>
        <source>%1 takes no value.</source>
        <translation>%1 nimmt keinen Wert.</translation>
    </message>
    <message>
        <source>%1 was given twice.</source>
        <translation>%1 wurde zweimal angegeben.</translation>
    </message>
    <message>
        <source>%1 was given; a whole number from %2 to %3 is accepted, for example &quot;80&quot;</source>
        <translation>%1 wurde angegeben; möglich ist eine ganze Zahl von %2 bis %3, zum Beispiel &quot;80&quot;</translation>
    </message>
    <message>
        <source>%1 was given; materials, supplies, rigs or tariffs is accepted, for example &quot;heatledger list supplies&quot;</source>
        <translation>%1 wurde angegeben; möglich ist materials, supplies, rigs oder tariffs, zum Beispiel &quot;heatledger list supplies&quot;</translation>
    </message>
    <message>
        <source>%1 was given; plan, rules, tariff, catalogue or result is accepted, for example &quot;heatledger schema rules&quot;</source>
        <translation>%1 wurde angegeben; möglich ist plan, rules, tariff, catalogue oder result, zum Beispiel &quot;heatledger schema rules&quot;</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot;</source>
        <translation>%1: &quot;%2&quot;</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not about a plan.</source>
        <translation>%1: Bei &quot;%2&quot; geht es um keinen Plan.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; writes what the ending of --to FILE names.</source>
        <translation>%1: &quot;%2&quot; schreibt, was die Endung von --to DATEI nennt.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 was given; %3 is accepted.</source>
        <translation>%1: %2 wurde angegeben; möglich ist %3.</translation>
    </message>
    <message>
        <source>%1: emissivity %2. %3</source>
        <translation>%1: Emissionsgrad %2. %3</translation>
    </message>
    <message>
        <source>%1: no problems; %2 rigs.</source>
        <translation>%1: keine Probleme; %2 Anlagen.</translation>
    </message>
    <message>
        <source>%1: nothing in the way; %2 rigs.</source>
        <translation>%1: nichts im Weg; %2 Anlagen.</translation>
    </message>
    <message>
        <source>%1: nothing was given; %2 is accepted.</source>
        <translation>%1: Es wurde nichts angegeben; möglich ist %2.</translation>
    </message>
    <message>
        <source>%1: only &quot;picture&quot; and &quot;report&quot; know it.</source>
        <translation>%1: Das kennen nur &quot;picture&quot; und &quot;report&quot;.</translation>
    </message>
    <message>
        <source>(remark)</source>
        <translation>(Hinweis)</translation>
    </message>
    <message>
        <source>--csv: &quot;%1&quot; has no table.</source>
        <translation>--csv: &quot;%1&quot; hat keine Tabelle.</translation>
    </message>
    <message>
        <source>--every-rule: only &quot;circuit&quot; knows it.</source>
        <translation>--every-rule: Das kennt nur &quot;circuit&quot;.</translation>
    </message>
    <message>
        <source>--json and --csv exclude each other.</source>
        <translation>--json und --csv schließen einander aus.</translation>
    </message>
    <message>
        <source>--rig N: over time in rig N alone</source>
        <translation>--rig N: nur Anlage N, über die Zeit</translation>
    </message>
    <message>
        <source>1 problem</source>
        <translation>1 Problem</translation>
    </message>
    <message>
        <source>1 remark</source>
        <translation>1 Hinweis</translation>
    </message>
    <message>
        <source>A plan&apos;s rig can begin with &quot;from&quot; and one of these names, and change what is different.</source>
        <translation>Eine Anlage im Plan kann mit &quot;from&quot; und einem dieser Namen beginnen und ändern, was anders ist.</translation>
    </message>
    <message>
        <source>As of %1. %2 (%3).</source>
        <translation>Stand %1. %2 (%3).</translation>
    </message>
    <message>
        <source>Conductivity in %1, density in %2, heat capacity in %3.</source>
        <translation>Wärmeleitfähigkeit in %1, Dichte in %2, Wärmekapazität in %3.</translation>
    </message>
    <message>
        <source>Dated examples for a plan&apos;s &quot;tariff&quot;: {&quot;from&quot;: NAME}; your own bill decides. Fixed charges are left out: a brew day does not change them.</source>
        <translation>Datierte Beispiele für &quot;tariff&quot;: {&quot;from&quot;: NAME} in einem Plan; es gilt Ihre eigene Rechnung. Feste Gebühren fehlen: Ein Brautag ändert sie nicht.</translation>
    </message>
    <message>
        <source>Emissivity: %1</source>
        <translation>Emissionsgrad: %1</translation>
    </message>
    <message>
        <source>Examples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>How it is shown</source>
        <translation>Darstellung</translation>
    </message>
    <message>
        <source>Long use: where a rule grants a circuit less for use of hours; what counts as long differs by region. No figure is not a permission.</source>
        <translation>Lange Nutzung: wo eine Regel einem Stromkreis über Stunden weniger zugesteht; was als lang gilt, ist je nach Region verschieden. Keine Zahl ist keine Erlaubnis.</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Werkstoffe</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Nominal voltages; what an outlet really gives may differ by several percent.</source>
        <translation>Nennspannungen; was eine Steckdose wirklich gibt, kann um mehrere Prozent abweichen.</translation>
    </message>
    <message>
        <source>Not modelled: seasons, of which each tariff is one, and holidays; a plan says &quot;day&quot;: &quot;weekend&quot; where one is priced so.</source>
        <translation>Nicht nachgebildet: Jahreszeiten, jeder Tarif ist eine davon, und Feiertage; ein Plan nennt &quot;day&quot;: &quot;weekend&quot;, wo einer so berechnet wird.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>Outsides of jackets</source>
        <translation>Außenseiten von Mänteln</translation>
    </message>
    <message>
        <source>Plans and what they may name</source>
        <translation>Pläne und was sie nennen dürfen</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Questions about a plan</source>
        <translation>Fragen zu einem Plan</translation>
    </message>
    <message>
        <source>Rigs</source>
        <translation>Anlagen</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Stromkreise</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Tariffs</source>
        <translation>Tarife</translation>
    </message>
    <message>
        <source>The bundled example. &quot;heatledger new my-plan.json&quot; writes you a copy.</source>
        <translation>Das mitgelieferte Beispiel. &quot;heatledger new my-plan.json&quot; schreibt Ihnen eine Kopie.</translation>
    </message>
    <message>
        <source>Type first</source>
        <translation>Für den Anfang</translation>
    </message>
    <message>
        <source>What if? (changes the answer, not the file)</source>
        <translation>Was wäre, wenn? (ändert die Antwort, nicht die Datei)</translation>
    </message>
    <message>
        <source>Without a plan: the bundled example. &quot;-&quot; reads the plan from standard input.</source>
        <translation>Ohne Plan: das mitgelieferte Beispiel. &quot;-&quot; liest den Plan von der Standardeingabe.</translation>
    </message>
    <message>
        <source>Wrote %1.</source>
        <translation>%1 ist geschrieben.</translation>
    </message>
    <message>
        <source>Wrote %1. Edit it, then type:  heatledger answer %1</source>
        <translation>%1 ist geschrieben. Bearbeiten Sie die Datei und geben Sie dann ein:  heatledger answer %1</translation>
    </message>
    <message>
        <source>a name that ends in %1</source>
        <translation>ein Name, der auf %1 endet</translation>
    </message>
    <message>
        <source>above the sea</source>
        <translation>über dem Meer</translation>
    </message>
    <message>
        <source>all questions with pictures and tables, as a PDF document</source>
        <translation>alle Fragen mit Bildern und Tabellen, als PDF-Dokument</translation>
    </message>
    <message>
        <source>columns of text; the terminal&apos;s, COLUMNS, or 80, if not given</source>
        <translation>Textspalten; die des Terminals, COLUMNS oder 80, wenn nicht angegeben</translation>
    </message>
    <message>
        <source>conducts</source>
        <translation>leitet</translation>
    </message>
    <message>
        <source>current, %1</source>
        <translation>Strom, %1</translation>
    </message>
    <message>
        <source>density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>electrical rules of a region of your own</source>
        <translation>elektrische Regeln einer eigenen Region</translation>
    </message>
    <message>
        <source>energy and money, by stage, batch and volume</source>
        <translation>Energie und Geld, nach Abschnitt, Sud und Volumen</translation>
    </message>
    <message>
        <source>every rig&apos;s circuit is rated for</source>
        <translation>wofür der Stromkreis jeder Anlage bemessen ist</translation>
    </message>
    <message>
        <source>everything, all rigs side by side</source>
        <translation>alles, alle Anlagen nebeneinander</translation>
    </message>
    <message>
        <source>for programs; always in SI, every key names its unit</source>
        <translation>für Programme; immer in SI, jeder Schlüssel nennt seine Einheit</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>heatledger %1: where the heat of an electric brew day goes</source>
        <translation>heatledger %1: wohin die Wärme eines elektrischen Brautags geht</translation>
    </message>
    <message>
        <source>how hard it boils, and what is left afterwards</source>
        <translation>wie kräftig es kocht und was danach übrig ist</translation>
    </message>
    <message>
        <source>its options, with examples</source>
        <translation>seine Optionen, mit Beispielen</translation>
    </message>
    <message>
        <source>long use, %1</source>
        <translation>lange Nutzung, %1</translation>
    </message>
    <message>
        <source>no command was given.</source>
        <translation>es wurde kein Befehl angegeben.</translation>
    </message>
    <message>
        <source>nothing was given; materials, supplies, rigs or tariffs is accepted, for example &quot;heatledger list supplies&quot;</source>
        <translation>Es wurde nichts angegeben; möglich ist materials, supplies, rigs oder tariffs, zum Beispiel &quot;heatledger list supplies&quot;</translation>
    </message>
    <message>
        <source>of every rig&apos;s supply</source>
        <translation>der Versorgung jeder Anlage</translation>
    </message>
    <message>
        <source>of the room</source>
        <translation>des Raums</translation>
    </message>
    <message>
        <source>of the room&apos;s air</source>
        <translation>der Raumluft</translation>
    </message>
    <message>
        <source>of the vessel to keep free</source>
        <translation>des Gefäßes, der frei bleibt</translation>
    </message>
    <message>
        <source>of the water as drawn</source>
        <translation>des Wassers aus der Leitung</translation>
    </message>
    <message>
        <source>one question as a picture (.svg, .png) or as the numbers behind it (.csv, .json)</source>
        <translation>eine Frage als Bild (.svg, .png) oder als die Zahlen dahinter (.csv, .json)</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>Standardeingabe</translation>
    </message>
    <message>
        <source>that of your messages if not given</source>
        <translation>die Ihrer Systemmeldungen, wenn nicht angegeben</translation>
    </message>
    <message>
        <source>the JSON Schema of plans, rules, tariffs, the catalogue or results, for editors and validators</source>
        <translation>das JSON-Schema von Plänen, Regeln, Tarifen, Katalog oder Ergebnissen, für Editoren und Prüfprogramme</translation>
    </message>
    <message>
        <source>the answer could not be written: %1.</source>
        <translation>die Antwort konnte nicht geschrieben werden: %1.</translation>
    </message>
    <message>
        <source>the bundled example</source>
        <translation>das mitgelieferte Beispiel</translation>
    </message>
    <message>
        <source>the command</source>
        <translation>der Befehl</translation>
    </message>
    <message>
        <source>the day stage by stage, and where the heat went</source>
        <translation>der Tag Abschnitt für Abschnitt, und wohin die Wärme ging</translation>
    </message>
    <message>
        <source>the element, the circuit and the batch that fit each other</source>
        <translation>Heizelement, Stromkreis und Sud, die zueinander passen</translation>
    </message>
    <message>
        <source>the part of this program that draws is not installed.</source>
        <translation>der Teil dieses Programms, der zeichnet, ist nicht installiert.</translation>
    </message>
    <message>
        <source>the rules that are kept too, each with clause and source</source>
        <translation>auch die eingehaltenen Regeln, jede mit Abschnitt und Quelle</translation>
    </message>
    <message>
        <source>the tables, for spreadsheets</source>
        <translation>die Tabellen, für die Tabellenkalkulation</translation>
    </message>
    <message>
        <source>unplugged at the mash temperature</source>
        <translation>ohne Strom bei Maischetemperatur</translation>
    </message>
    <message>
        <source>vapour, heat and humidity in the room, and the airflow that helps</source>
        <translation>Dampf, Wärme und Feuchte im Raum, und der Luftstrom, der hilft</translation>
    </message>
    <message>
        <source>voltage, %1</source>
        <translation>Spannung, %1</translation>
    </message>
    <message>
        <source>wanted to strike, and from mash to boil</source>
        <translation>gewünscht bis zum Einmaischen und von der Maische bis zum Kochen</translation>
    </message>
    <message>
        <source>wanted, of the volume before the boil</source>
        <translation>gewünscht, vom Volumen vor dem Kochen</translation>
    </message>
    <message>
        <source>what a jacket saves, and whether it is worth it</source>
        <translation>was ein Mantel spart, und ob er sich lohnt</translation>
    </message>
    <message>
        <source>what a plan may name: materials, supplies, rigs or tariffs, with sources</source>
        <translation>was ein Plan nennen darf: materials (Werkstoffe), supplies (Stromkreise), rigs (Anlagen) oder tariffs (Tarife), mit Quellen</translation>
    </message>
    <message>
        <source>what is wrong with a plan, and nothing else</source>
        <translation>was an einem Plan falsch ist, und sonst nichts</translation>
    </message>
    <message>
        <source>whether the circuit carries it, rule by rule, with the clauses</source>
        <translation>ob der Stromkreis es trägt, Regel für Regel, mit den Abschnitten</translation>
    </message>
    <message>
        <source>whole document</source>
        <translation>ganzes Dokument</translation>
    </message>
    <message>
        <source>whose electrical rules apply</source>
        <translation>deren elektrische Regeln gelten</translation>
    </message>
    <message>
        <source>writes a plan to start from; never over a file that exists</source>
        <translation>schreibt einen Plan für den Anfang; nie über eine Datei, die schon da ist</translation>
    </message>
    <message>
        <source>your own brew day</source>
        <translation>Ihr eigener Brautag</translation>
    </message>
    <message>
        <source>your own copy of it, to edit</source>
        <translation>Ihre eigene Kopie davon, zum Bearbeiten</translation>
    </message>
    <message>
        <source>no font is installed to draw with; fonts-dejavu-core has one</source>
        <translation>es ist keine Schrift zum Zeichnen installiert; fonts-dejavu-core enthält eine</translation>
    </message>
    <message>
        <source>%1 was given; one of %2 is accepted, for example &quot;Canada&quot;; rules of your own are a file: --rules here, &quot;rules&quot; in a plan&apos;s &quot;place&quot;</source>
        <translation>%1 wurde angegeben; angenommen wird eines von %2, zum Beispiel &quot;Canada&quot;; eigene Regeln stehen in einer Datei: --rules hier, &quot;rules&quot; im Abschnitt &quot;place&quot; eines Plans</translation>
    </message>
    <message>
        <source>&quot;--suppose-jacket&quot; adds what a jacket would change, and of a rig that has one, what it would be without.</source>
        <translation>„--suppose-jacket“ zeigt auch, was ein Mantel ändern würde, und bei einer Anlage, die einen hat, wie es ohne ihn wäre.</translation>
    </message>
    <message>
        <source>--suppose-jacket: only &quot;night&quot; and &quot;picture&quot; know it.</source>
        <translation>--suppose-jacket: Nur „night“ und „picture“ kennen das.</translation>
    </message>
    <message>
        <source>What if?</source>
        <translation>Was wäre, wenn?</translation>
    </message>
    <message>
        <source>how far a mash cools that is left unplugged, hour by hour</source>
        <translation>wie weit eine Maische ohne Strom abkühlt, Stunde für Stunde</translation>
    </message>
    <message>
        <source>how far it cools with the plan&apos;s jacket to compare, too; and without the one that a rig has</source>
        <translation>wie weit es auch mit dem Mantel zum Vergleichen abkühlt, und ohne den, den eine Anlage hat</translation>
    </message>
    <message>
        <source>--to: %1 is the very plan that is read; nothing was written, and --force changes nothing about that.</source>
        <translation>--to: %1 ist der gelesene Plan selbst; geschrieben wurde nichts, und auch --force ändert daran nichts.</translation>
    </message>
    <message>
        <source>--to: %1 is there already and is %2; nothing was written. What this program wrote of the same kind is replaced; --force replaces whatever is there.</source>
        <translation>--to: %1 gibt es schon, und zwar ist es %2; geschrieben wurde nichts. Was dieses Programm von derselben Art geschrieben hat, wird ersetzt; --force ersetzt, was auch immer dort steht.</translation>
    </message>
    <message>
        <source>what to write; replaces what this program wrote of the same kind, and no other file</source>
        <translation>was geschrieben wird; ersetzt, was dieses Programm von derselben Art geschrieben hat, und keine andere Datei</translation>
    </message>
    <message>
        <source>replaces whatever stands in --to FILE, but never the plan itself</source>
        <translation>ersetzt, was auch immer in --to FILE steht, aber nie den Plan selbst</translation>
    </message>
    <message>
        <source>%1 was given; %2 is accepted, for example %3</source>
        <translation>%1 wurde angegeben; möglich ist %2, zum Beispiel %3</translation>
    </message>
    <message>
        <source>%1 was given; a whole number from 1 to %2, or a letter from a to %3, is accepted, for example &quot;2&quot;</source>
        <translation>%1 wurde angegeben; möglich ist eine ganze Zahl von 1 bis %2 oder ein Buchstabe von a bis %3, zum Beispiel &quot;2&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not depend on it, as this plan leaves its mash plugged in; &quot;%2&quot; does</source>
        <translation>&quot;%1&quot; hängt davon nicht ab, weil dieser Plan seine Maische am Strom lässt; &quot;%2&quot; schon</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; does not depend on it; &quot;size&quot; does.</source>
        <translation>%1: &quot;%2&quot; hängt davon nicht ab; &quot;size&quot; schon.</translation>
    </message>
    <message>
        <source>--rig: &quot;%1&quot; is not about one rig alone.</source>
        <translation>--rig: Bei &quot;%1&quot; geht es nicht um eine einzelne Anlage.</translation>
    </message>
    <message>
        <source>--rig: --json has every rig, each under its name; --csv can have one alone.</source>
        <translation>--rig: --json hat jede Anlage unter ihrem Namen; --csv kann eine allein haben.</translation>
    </message>
    <message>
        <source>%1 is no command; perhaps &quot;%2&quot; was meant.</source>
        <translation>%1 ist kein Befehl; vielleicht war &quot;%2&quot; gemeint.</translation>
    </message>
    <message>
        <source>%1 is nothing that &quot;%2&quot; knows; perhaps &quot;%3&quot; was meant.</source>
        <translation>%1 kennt &quot;%2&quot; nicht; vielleicht war &quot;%3&quot; gemeint.</translation>
    </message>
    <message>
        <source>the part of this program that has a window is not installed; the answer stands here.</source>
        <translation>Der Teil dieses Programms mit dem Fenster ist nicht installiert; die Antwort steht hier.</translation>
    </message>
    <message>
        <source>no display was found; the answer stands here.</source>
        <translation>Es wurde keine Anzeige gefunden; die Antwort steht hier.</translation>
    </message>
    <message>
        <source>one rig alone, by number or letter: 2 or b</source>
        <translation>eine Anlage allein, nach Nummer oder Buchstabe: 2 oder b</translation>
    </message>
    <message>
        <source>%1: no problems; one rig.</source>
        <translation>%1: keine Probleme; eine Anlage.</translation>
    </message>
    <message>
        <source>%1: nothing in the way; one rig.</source>
        <translation>%1: nichts im Weg; eine Anlage.</translation>
    </message>
    <message>
        <source>--like: only &quot;new&quot; knows it.</source>
        <translation>--like: Das kennt nur &quot;new&quot;.</translation>
    </message>
    <message>
        <source>What to start from</source>
        <translation>Womit begonnen wird</translation>
    </message>
    <message>
        <source>another plan than the example: %1</source>
        <translation>ein anderer Plan als das Beispiel: %1</translation>
    </message>
    <message>
        <source>--brief: only &quot;answer&quot; knows it.</source>
        <translation>--brief: Nur „answer“ kennt das.</translation>
    </message>
    <message>
        <source>--brief: what is for programs or spreadsheets is never shortened.</source>
        <translation>--brief: Was für Programme oder Tabellen ist, wird nie gekürzt.</translation>
    </message>
    <message>
        <source>one verdict a rig, and no more</source>
        <translation>ein Urteil je Anlage und nicht mehr</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Mains current kills. For planning only: have a licensed electrician check.</source>
        <translation>Netzstrom tötet. Nur zur Planung: Lassen Sie eine Elektrofachkraft prüfen.</translation>
    </message>
    <message>
        <source>what a jacket is drawn against</source>
        <translation>wogegen ein Mantel gezeichnet wird</translation>
    </message>
    <message>
        <source>&quot;heatledger safety&quot; tells %1 more of this plan&apos;s day: scalds, lifting, cooling and the like.</source>
        <translation>„heatledger safety“ nennt %1 weitere für den Tag dieses Plans: Verbrühen, Heben, Abkühlen und dergleichen.</translation>
    </message>
    <message>
        <source>all there is to take care of on this day, with this plan&apos;s figures</source>
        <translation>alles, worauf an diesem Tag zu achten ist, mit den Zahlen dieses Plans</translation>
    </message>
    <message>
        <source>there is not enough memory for it.</source>
        <translation>es ist nicht genug Speicher dafür da.</translation>
    </message>
    <message>
        <source>%1 was given; a whole number from 1 to %2, or a letter of this plan&apos;s rigs (%3), is accepted, for example &quot;%4&quot;</source>
        <translation>%1 wurde angegeben; möglich ist eine ganze Zahl von 1 bis %2 oder ein Buchstabe der Anlagen dieses Plans (%3), zum Beispiel &quot;%4&quot;</translation>
    </message>
    <message>
        <source>any keys of the plan over lists and ranges, a row for each combination, for scripts</source>
        <translation>beliebige Schlüssel des Plans über Listen und Bereiche, je Kombination eine Zeile, für Skripte</translation>
    </message>
    <message>
        <source>a key of the plan, and its values between &quot;, &quot; or &quot;; &quot;; a range is &quot;1 kW..5 kW in 9&quot; or &quot;1 kW..5 kW by 500 W&quot;; once or several times</source>
        <translation>ein Schlüssel des Plans und seine Werte, getrennt durch &quot;, &quot; oder &quot;; &quot;; ein Bereich ist &quot;1 kW..5 kW in 9&quot; oder &quot;1 kW..5 kW by 500 W&quot;; einmal oder mehrmals</translation>
    </message>
    <message>
        <source>which columns: places of a rig in what --json of &quot;answer&quot; writes, such as &quot;cost, day/duration_s&quot;</source>
        <translation>welche Spalten: Stellen einer Anlage in dem, was &quot;answer&quot; mit --json schreibt, wie &quot;cost, day/duration_s&quot;</translation>
    </message>
    <message>
        <source>combinations that may be begun; %1 if not given</source>
        <translation>wie viele Kombinationen begonnen werden dürfen; %1, wenn nicht angegeben</translation>
    </message>
    <message>
        <source>What is varied</source>
        <translation>Was verändert wird</translation>
    </message>
    <message>
        <source>%1: only &quot;sweep&quot; knows it.</source>
        <translation>%1: Das kennt nur &quot;sweep&quot;.</translation>
    </message>
    <message>
        <source>--units: &quot;sweep&quot; writes for programs, in SI; every name has its unit.</source>
        <translation>--units: &quot;sweep&quot; schreibt für Programme, in SI; jeder Name hat seine Einheit.</translation>
    </message>
    <message>
        <source>&quot;sweep&quot; needs a key to vary, for example --vary &quot;batch/boil=45 min, 60 min&quot;.</source>
        <translation>&quot;sweep&quot; braucht einen Schlüssel, der sich verändert, zum Beispiel --vary &quot;batch/boil=45 min, 60 min&quot;.</translation>
    </message>
    <message>
        <source>%1: &quot;sweep&quot; takes keys of the plan instead, one value or several: --vary &quot;place/room=16 C&quot;.</source>
        <translation>%1: &quot;sweep&quot; nimmt stattdessen Schlüssel des Plans, mit einem Wert oder mehreren: --vary &quot;place/room=16 C&quot;.</translation>
    </message>
    <message>
        <source>the one change that helps most, and the few together</source>
        <translation>die eine Änderung, die vor allem hilft, und die wenigen zusammen</translation>
    </message>
    <message>
        <source>at most so many changes at once; %1 if not given. Their number of ways is told, and Ctrl-C keeps what was found</source>
        <translation>höchstens so viele Änderungen zugleich; %1 ohne Angabe. Die Zahl der Möglichkeiten wird genannt, und Strg-C behält, was gefunden ist</translation>
    </message>
    <message>
        <source>--wish: only &quot;helps&quot; and its picture, &quot;helps-most&quot;, know it.</source>
        <translation>--wish: Das kennen nur &quot;helps&quot; und sein Bild, &quot;helps-most&quot;.</translation>
    </message>
    <message>
        <source>--together: only &quot;helps&quot; knows it.</source>
        <translation>--together: Das kennt nur &quot;helps&quot;.</translation>
    </message>
    <message>
        <source>a whole number from 1 to %1</source>
        <translation>eine ganze Zahl von 1 bis %1</translation>
    </message>
    <message>
        <source>And then?</source>
        <translation>Und dann?</translation>
    </message>
    <message>
        <source>&quot;--rig&quot; with a rig&apos;s letter shows all of its changes, and &quot;--wish&quot; ranks them by another wish: %1.</source>
        <translation>&quot;--rig&quot; mit dem Buchstaben einer Anlage zeigt alle ihre Änderungen, und &quot;--wish&quot; ordnet sie nach einem anderen Wunsch: %1.</translation>
    </message>
    <message>
        <source>%1 ways to try; Ctrl-C shows what was found</source>
        <translation>%1 Möglichkeiten zu versuchen; Strg-C zeigt, was gefunden ist</translation>
    </message>
    <message>
        <source>%1 of %2 ways tried; Ctrl-C shows what was found</source>
        <translation>%1 von %2 Möglichkeiten versucht; Strg-C zeigt, was gefunden ist</translation>
    </message>
    <message>
        <source>%1: to roll, to be ready sooner, warmer in the morning, cheaper, or on a circuit that fits; what lacks most if not given</source>
        <translation>%1: wallend kochen, früher fertig, am Morgen wärmer, billiger oder an einem Stromkreis, der passt; ohne Angabe, was am meisten fehlt</translation>
    </message>
    <message>
        <source>your own kettle, of this size to the brim</source>
        <translation>Ihr eigener Kessel, randvoll so groß</translation>
    </message>
    <message>
        <source>of its element, as its plate says</source>
        <translation>seines Heizelements, wie es auf dem Typenschild steht</translation>
    </message>
    <message>
        <source>that the plate states it for</source>
        <translation>für die das Typenschild sie nennt</translation>
    </message>
    <message>
        <source>of finished wort; 55 % of the kettle if not given</source>
        <translation>der fertigen Würze; ohne Angabe 55 % des Kessels</translation>
    </message>
    <message>
        <source>--circuit: %1 was given; %2 has %3, or the current of one of them.</source>
        <translation>--circuit: %1 wurde angegeben; %2 hat %3, oder den Strom von einem davon.</translation>
    </message>
    <message>
        <source>--region: %1 was given; for a kettle %2 is accepted.</source>
        <translation>--region: %1 wurde angegeben; für einen Kessel wird %2 angenommen.</translation>
    </message>
    <message>
        <source>whose circuits and rules apply</source>
        <translation>deren Stromkreise und Regeln gelten</translation>
    </message>
    <message>
        <source>it is plugged into, or its name in the catalogue</source>
        <translation>an dem er hängt, oder sein Name im Katalog</translation>
    </message>
    <message>
        <source>it heats without a lid</source>
        <translation>er heizt ohne Deckel</translation>
    </message>
    <message>
        <source>it has a jacket of 19 mm foam</source>
        <translation>er hat einen Mantel aus 19 mm Schaum</translation>
    </message>
    <message>
        <source>--like: a plan is either like another or of a kettle of yours.</source>
        <translation>--like: ein Plan ist entweder wie ein anderer oder von einem Kessel von Ihnen.</translation>
    </message>
    <message>
        <source>%1: only &quot;new&quot; knows it.</source>
        <translation>%1: Das kennt nur &quot;new&quot;.</translation>
    </message>
    <message>
        <source>Or a kettle of your own; what is left out is assumed</source>
        <translation>Oder ein eigener Kessel; was fehlt, wird angenommen</translation>
    </message>
    <message>
        <source>the figures that decide, each rig against the first</source>
        <translation>die entscheidenden Zahlen, jede Anlage gegen die erste</translation>
    </message>
    <message>
        <source>It is %1.</source>
        <translation>Es ist %1.</translation>
    </message>
    <message>
        <source>%1 was given; SI or US is accepted, and units of choice behind it, for example &quot;SI,F,gal&quot;</source>
        <translation>%1 wurde angegeben; möglich ist SI oder US, dahinter Einheiten nach Wahl, zum Beispiel &quot;SI,F,gal&quot;</translation>
    </message>
    <message>
        <source>all numbers at once, SI if not given; units of choice stand behind it, as in SI,F,gal</source>
        <translation>alle Zahlen auf einmal, SI, wenn nicht angegeben; Einheiten nach Wahl stehen dahinter, wie in SI,F,gal</translation>
    </message>
    <message>
        <source>--explain: only the pages of one question know it.</source>
        <translation>--explain: nur die Seiten einer Frage kennen es.</translation>
    </message>
    <message>
        <source>--explain: what is for programs or spreadsheets has no words for it.</source>
        <translation>--explain: Was für Programme oder Tabellen ist, hat keine Worte dafür.</translation>
    </message>
    <message>
        <source>how the figures were computed, too: law, source and how sure</source>
        <translation>auch wie die Zahlen berechnet wurden: Gesetz, Quelle und wie sicher</translation>
    </message>
    <message>
        <source>how far off the figures may be, and what makes them so</source>
        <translation>wie weit die Zahlen danebenliegen können und woran das liegt</translation>
    </message>
    <message>
        <source>these readings are of one rig; say of which: %1</source>
        <translation>diese Ablesungen gehören zu einer Anlage; sagen Sie, zu welcher: %1</translation>
    </message>
    <message>
        <source>%1: only &quot;learn&quot; knows it.</source>
        <translation>%1: nur „learn“ kennt das.</translation>
    </message>
    <message>
        <source>What was read</source>
        <translation>Was abgelesen wurde</translation>
    </message>
    <message>
        <source>what was read: lines such as &quot;21:05 66.3 °C&quot;, or the CSV of a logger; - for standard input</source>
        <translation>was abgelesen wurde: Zeilen wie „21:05 66,3 °C“ oder die CSV-Datei eines Datenschreibers; - für die Standardeingabe</translation>
    </message>
    <message>
        <source>leaves out lines that are wrong, instead of stopping there</source>
        <translation>falsche Zeilen weglassen, statt dort aufzuhören</translation>
    </message>
    <message>
        <source>the column of the time, by its head or its number</source>
        <translation>die Spalte der Zeit, mit ihrem Kopf oder ihrer Nummer</translation>
    </message>
    <message>
        <source>the column of the wort&apos;s temperature</source>
        <translation>die Spalte der Würzetemperatur</translation>
    </message>
    <message>
        <source>what its bare numbers are in: C, F or K</source>
        <translation>worin ihre bloßen Zahlen stehen: C, F oder K</translation>
    </message>
    <message>
        <source>what times without a clock count</source>
        <translation>was Zeiten ohne Uhr zählen</translation>
    </message>
    <message>
        <source>the thermometer was held into ice or boiling water before</source>
        <translation>das Thermometer wurde vorher in Eis oder kochendes Wasser gehalten</translation>
    </message>
    <message>
        <source>nobody stirred before reading while it heated</source>
        <translation>beim Heizen wurde vor dem Ablesen nicht gerührt</translation>
    </message>
    <message>
        <source>what your own readings of a day say of a kettle, and how sure</source>
        <translation>was Ihre eigenen Ablesungen eines Tages über einen Kessel sagen, und wie sicher</translation>
    </message>
    <message>
        <source>what stands between columns: comma, semicolon, tab or blank</source>
        <translation>was zwischen den Spalten steht: comma, semicolon, tab oder blank</translation>
    </message>
    <message>
        <source>--keep: what is learned is written into a plan of yours; name its file.</source>
        <translation>--keep: Was gelernt wird, kommt in einen Plan von Ihnen; nennen Sie seine Datei.</translation>
    </message>
    <message>
        <source>Nothing was kept: these readings tell neither its losses nor what its open surface gives off.</source>
        <translation>Nichts wurde behalten: Diese Messwerte sagen weder etwas über seine Verluste noch darüber, was seine offene Oberfläche abgibt.</translation>
    </message>
    <message>
        <source>Kept in %1: what it loses, and what its open surface gives off.</source>
        <translation>Behalten in %1: was er verliert und was seine offene Oberfläche abgibt.</translation>
    </message>
    <message>
        <source>Kept in %1: what it loses.</source>
        <translation>Behalten in %1: was er verliert.</translation>
    </message>
    <message>
        <source>Kept in %1: what its open surface gives off.</source>
        <translation>Behalten in %1: was seine offene Oberfläche abgibt.</translation>
    </message>
    <message>
        <source>Every answer from it counts with that. To undo it take out its factors and &quot;measured&quot;; the file as it was is %1.</source>
        <translation>Jede Antwort aus ihm rechnet damit. Um es zurückzunehmen, streichen Sie die Faktoren und &quot;measured&quot;; die Datei, wie sie war, ist %1.</translation>
    </message>
    <message>
        <source>what is kept is of the plan as it is; leave %1 out</source>
        <translation>behalten wird, was zum Plan gehört, wie er ist; lassen Sie %1 weg</translation>
    </message>
    <message>
        <source>writes what is learned of the kettle into the plan, for every later day</source>
        <translation>schreibt in den Plan, was über den Kessel gelernt wird, für jeden späteren Tag</translation>
    </message>
    <message>
        <source>Kept for later days</source>
        <translation>Für spätere Tage behalten</translation>
    </message>
    <message>
        <source>one rig&apos;s day on a page to brew by: times, what to do, what to read and write in</source>
        <translation>der Tag einer Anlage auf einer Seite, nach der gebraut wird: Zeiten, was zu tun, was abzulesen und einzutragen ist</translation>
    </message>
    <message>
        <source>a page for paper and phone (.html) in place of text; replaces what this program wrote of the same kind, and no other file</source>
        <translation>eine Seite für Papier und Telefon (.html) statt Text; ersetzt, was dieses Programm von derselben Art geschrieben hat, und keine andere Datei</translation>
    </message>
    <message>
        <source>%1: a sheet is for people; &quot;answer&quot; knows it.</source>
        <translation>%1: Ein Blatt ist für Menschen; &quot;answer&quot; kennt es.</translation>
    </message>
    <message>
        <source>%1: only &quot;picture&quot;, &quot;report&quot; and &quot;sheet&quot; know it.</source>
        <translation>%1: Das kennen nur &quot;picture&quot;, &quot;report&quot; und &quot;sheet&quot;.</translation>
    </message>
    <message>
        <source>a sheet is of one rig; say of which: %1</source>
        <translation>ein Blatt gehört zu einer Anlage; sagen Sie, zu welcher: %1</translation>
    </message>
    <message>
        <source>how long the wort takes to its pitching temperature, and the water for it</source>
        <translation>wie lange die Würze bis zur Anstelltemperatur braucht, und das Wasser dafür</translation>
    </message>
    <message>
        <source>%1 was given; what is to be ready and a clock time from 00:00 to 23:59 are accepted, for example &quot;boil 11:00&quot;; that may be %2</source>
        <translation>%1 wurde angegeben; erlaubt ist, was fertig sein soll, und eine Uhrzeit von 00:00 bis 23:59, zum Beispiel „boil 11:00“; das kann %2 sein</translation>
    </message>
    <message>
        <source>to be ready in time; the day then begins when it must</source>
        <translation>rechtzeitig fertig zu sein; der Tag beginnt dann, wann er muss</translation>
    </message>
    <message>
        <source>the day while it goes on: what comes next and when, anew with all that is read</source>
        <translation>der Tag, während er läuft: was als Nächstes kommt und wann, neu mit allem, was abgelesen wird</translation>
    </message>
    <message>
        <source>%1: only &quot;learn&quot; and &quot;follow&quot; know it.</source>
        <translation>%1: Das kennen nur „learn“ und „follow“.</translation>
    </message>
    <message>
        <source>%1: only &quot;follow&quot; knows it.</source>
        <translation>%1: Das kennt nur „follow“.</translation>
    </message>
    <message>
        <source>a time of the clock, with or without a date (%1)</source>
        <translation>eine Uhrzeit mit oder ohne Datum (%1)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs what was read, for example --readings night.csv.</source>
        <translation>„%1“ braucht, was abgelesen wurde, zum Beispiel --readings night.csv.</translation>
    </message>
    <message>
        <source>--readings: what is followed is a file, for example --readings night.csv; standard input can be read once, with --once.</source>
        <translation>--readings: Verfolgt wird eine Datei, zum Beispiel --readings night.csv; die Standardeingabe kann einmal gelesen werden, mit --once.</translation>
    </message>
    <message>
        <source>tells how it stands now and ends, instead of watching the file and what you type</source>
        <translation>sagt, wie es jetzt steht, und endet, statt die Datei und Ihre Eingaben zu beobachten</translation>
    </message>
    <message>
        <source>another clock than that of this machine: 21:30</source>
        <translation>eine andere Uhr als die dieses Rechners: 21:30</translation>
    </message>
    <message>
        <source>%1 says nothing that this file has a place for; a temperature, a meter, litres, a gravity or an event is accepted, e.g. &quot;66.3&quot;</source>
        <translation>%1 sagt nichts, wofür diese Datei einen Platz hat; angenommen wird eine Temperatur, ein Zählerstand, Liter, eine Stammwürze oder ein Ereignis, z. B. „66,3“</translation>
    </message>
    <message>
        <source>Following %1. Type what you read, such as 66.3, &quot;lid on&quot; or &quot;boil&quot;: it is written there with the time. Ctrl-C ends.</source>
        <translation>%1 wird verfolgt. Tippen Sie, was Sie ablesen, etwa 66,3, „Deckel zu“ oder „kocht“: Es wird mit der Uhrzeit dort hineingeschrieben. Strg-C beendet.</translation>
    </message>
    <message>
        <source>%1 is not there yet and is waited for. Type what you read, such as 66.3, &quot;lid on&quot; or &quot;boil&quot;: that begins it. Ctrl-C ends.</source>
        <translation>%1 ist noch nicht da, und es wird darauf gewartet. Tippen Sie, was Sie ablesen, etwa 66,3, „Deckel zu“ oder „kocht“: Damit beginnt die Datei. Strg-C beendet.</translation>
    </message>
    <message>
        <source>The last line of %1 has no end yet; it waits for its rest.</source>
        <translation>Die letzte Zeile von %1 hat noch kein Ende; sie wartet auf ihren Rest.</translation>
    </message>
    <message>
        <source>what was typed, and is not written</source>
        <translation>was getippt wurde und nicht geschrieben ist</translation>
    </message>
    <message>
        <source>%1; not written: %2</source>
        <translation>%1; nicht geschrieben: %2</translation>
    </message>
    <message>
        <source>The clock went from %1 to %2 meanwhile.</source>
        <translation>Die Uhr ging inzwischen von %1 auf %2.</translation>
    </message>
    <message>
        <source>a day is followed of one rig; say of which: %1</source>
        <translation>Verfolgt wird der Tag einer Anlage; sagen Sie, welcher: %1</translation>
    </message>
    <message>
        <source>%1 is the plan; readings are in a file of their own</source>
        <translation>%1 ist der Plan; Ablesungen stehen in einer eigenen Datei</translation>
    </message>
    <message>
        <source>what time and heat do to the wort: mash, hops and DMS</source>
        <translation>was Zeit und Hitze mit der Würze machen: Maische, Hopfen und DMS</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>or</source>
        <translation>oder</translation>
    </message>
    <message>
        <source>hour %1</source>
        <translation>Stunde %1</translation>
    </message>
</context>
<context>
    <name>gui::AnswerTable</name>
    <message>
        <source>&amp;Copy cell</source>
        <translation>Zelle &amp;kopieren</translation>
    </message>
    <message>
        <source>Copy what is &amp;selected</source>
        <translation>Auswahl k&amp;opieren</translation>
    </message>
    <message>
        <source>Copy the &amp;table with its heads</source>
        <translation>&amp;Tabelle mit ihren Köpfen kopieren</translation>
    </message>
    <message>
        <source>&amp;How was this computed?</source>
        <translation>&amp;Wie wurde das berechnet?</translation>
    </message>
    <message>
        <source>&amp;Open &quot;%1&quot;</source>
        <translation>&quot;%1&quot; ö&amp;ffnen</translation>
    </message>
</context>
<context>
    <name>gui::CautionsFoot</name>
    <message>
        <source>All cautions (%1)</source>
        <translation>Alle Warnungen (%1)</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnungen</translation>
    </message>
    <message>
        <source>Shows all that there is to take care of, or folds it away</source>
        <translation>Zeigt alles, worauf zu achten ist, oder klappt es weg</translation>
    </message>
</context>
<context>
    <name>gui::ColumnChoices</name>
    <message>
        <source>The time is in</source>
        <translation>Die Zeit steht in</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>The wort&apos;s temperature is in</source>
        <translation>Die Würzetemperatur steht in</translation>
    </message>
    <message>
        <source>with bare numbers in</source>
        <translation>bloße Zahlen in</translation>
    </message>
    <message>
        <source>found nowhere</source>
        <translation>nirgends gefunden</translation>
    </message>
    <message>
        <source>as found: %1</source>
        <translation>wie gefunden: %1</translation>
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
    <message>
        <source>change of %1 (%2)</source>
        <translation>Änderung von %1 (%2)</translation>
    </message>
    <message>
        <source>change of %1 of %2</source>
        <translation>Änderung von %1 bei %2</translation>
    </message>
    <message>
        <source>change of %1 (%2) of %3</source>
        <translation>Änderung von %1 (%2) bei %3</translation>
    </message>
    <message>
        <source>Slider (Alt+Down)</source>
        <translation>Schieberegler (Alt+Ab)</translation>
    </message>
</context>
<context>
    <name>gui::HelpNote</name>
    <message>
        <source>Source: %1.</source>
        <translation>Quelle: %1.</translation>
    </message>
    <message>
        <source>How sure: %1</source>
        <translation>Wie sicher: %1</translation>
    </message>
</context>
<context>
    <name>gui::KettlePage</name>
    <message>
        <source>There is no answer: %1.</source>
        <translation>Es gibt keine Antwort: %1.</translation>
    </message>
    <message>
        <source>&amp;Element</source>
        <translation>&amp;Heizelement</translation>
    </message>
    <message>
        <source>Al&amp;titude</source>
        <translation>Mee&amp;reshöhe</translation>
    </message>
    <message>
        <source>Grey is assumed. A number alone takes the unit that stands there.</source>
        <translation>Grau ist angenommen. Eine Zahl allein bekommt die Einheit, die dort steht.</translation>
    </message>
    <message>
        <source>How the kettle&apos;s size is stated</source>
        <translation>Wie die Größe des Kessels angegeben wird</translation>
    </message>
    <message>
        <source>by volume</source>
        <translation>als Volumen</translation>
    </message>
    <message>
        <source>by diameter and height</source>
        <translation>als Durchmesser und Höhe</translation>
    </message>
    <message>
        <source>&amp;Kettle</source>
        <translation>&amp;Kessel</translation>
    </message>
    <message>
        <source>&amp;Country</source>
        <translation>&amp;Land</translation>
    </message>
    <message>
        <source>&amp;Plugged into</source>
        <translation>Steckt &amp;in</translation>
    </message>
    <message>
        <source>%1 (assumed)</source>
        <translation>%1 (angenommen)</translation>
    </message>
    <message>
        <source>&amp;lid while it heats</source>
        <translation>Deckel beim Aufhei&amp;zen</translation>
    </message>
    <message>
        <source>&amp;jacket</source>
        <translation>Man&amp;tel</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation>%1, angenommen</translation>
    </message>
    <message>
        <source>My kettle</source>
        <translation>Mein Kessel</translation>
    </message>
    <message>
        <source>Taken as high as it is wide, %1 × %2: common practice, no source.</source>
        <translation>So hoch wie breit angenommen, %1 × %2: übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>made &amp;for</source>
        <translation>gebaut &amp;für</translation>
    </message>
    <message>
        <source>Finished &amp;wort</source>
        <translation>Fertige &amp;Würze</translation>
    </message>
    <message>
        <source>&amp;Room</source>
        <translation>R&amp;aum</translation>
    </message>
    <message>
        <source>&amp;Diameter</source>
        <translation>&amp;Durchmesser</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>Höh&amp;e</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
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
    <message>
        <source>1 problem in the plan</source>
        <translation>1 Problem im Plan</translation>
    </message>
    <message>
        <source>%1 problems in the plan</source>
        <translation>%1 Probleme im Plan</translation>
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
        <translation>E&amp;xportieren, was zu sehen ist</translation>
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
        <source>Report as P&amp;DF ...</source>
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

Made with Qt %1 (LGPL 3) and Qt Charts (GPL 3), Boost (Boost Software License) and nlohmann/json (MIT).</source>
        <translation>Plant einen Brautag mit einem elektrischen Kessel und verbucht jedes Joule.

Freie Software unter der GNU General Public License, Version 3 oder später. Sie kommt ohne jede Gewährleistung.

Gemacht mit Qt %1 (LGPL 3) und Qt Charts (GPL 3), Boost (Boost Software License) und nlohmann/json (MIT).</translation>
    </message>
    <message>
        <source>change of the batches a year</source>
        <translation>Änderung der Sude im Jahr</translation>
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
    <message>
        <source>This plan was not computed: %1. What is shown is the last answer.</source>
        <translation>Dieser Plan wurde nicht berechnet: %1. Gezeigt wird die letzte Antwort.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>%1 is the plan that is open. Choose another name.</source>
        <translation>%1 ist der geöffnete Plan. Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>Its copy is from %1 today.</source>
        <translation>Die Kopie ist von heute, %1 Uhr.</translation>
    </message>
    <message>
        <source>Its copy is from %1 on %2.</source>
        <translation>Die Kopie ist von %2, %1 Uhr.</translation>
    </message>
    <message>
        <source>Its values are those of the file.</source>
        <translation>Ihre Werte sind die der Datei.</translation>
    </message>
    <message>
        <source>1 value differs from the file: %1.</source>
        <translation>1 Wert ist anders als in der Datei: %1.</translation>
    </message>
    <message>
        <source>%1 values differ from the file: %2.</source>
        <translation>%1 Werte sind anders als in der Datei: %2.</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>There is no step back</source>
        <translation>Es gibt keinen Schritt zurück</translation>
    </message>
    <message>
        <source>No step was taken back</source>
        <translation>Es wurde kein Schritt zurückgenommen</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
    <message>
        <source>&amp;New plan ...</source>
        <translation>&amp;Neuer Plan ...</translation>
    </message>
    <message>
        <source>Plan and rigs</source>
        <translation>Plan und Anlagen</translation>
    </message>
    <message>
        <source>Shows the plan&apos;s forms beside the answer, or folds them away (%1)</source>
        <translation>Zeigt die Felder des Plans neben der Antwort oder klappt sie ein (%1)</translation>
    </message>
    <message>
        <source>&amp;Same, with ...</source>
        <translation>&amp;Wie dieser, aber ...</translation>
    </message>
    <message>
        <source>Units of choice</source>
        <translation>Einheiten nach Wahl</translation>
    </message>
    <message>
        <source>&amp;Temperatures</source>
        <translation>&amp;Temperaturen</translation>
    </message>
    <message>
        <source>&amp;Volumes</source>
        <translation>&amp;Volumen</translation>
    </message>
    <message>
        <source>M&amp;asses</source>
        <translation>M&amp;assen</translation>
    </message>
    <message>
        <source>&amp;Lengths</source>
        <translation>&amp;Längen</translation>
    </message>
    <message>
        <source>&amp;Power</source>
        <translation>Leistun&amp;g</translation>
    </message>
    <message>
        <source>&amp;Energy</source>
        <translation>&amp;Energie</translation>
    </message>
    <message>
        <source>P&amp;ressure</source>
        <translation>D&amp;ruck</translation>
    </message>
    <message>
        <source>Sa&amp;me for all rigs</source>
        <translation>Für &amp;alle Anlagen gleich</translation>
    </message>
    <message>
        <source>Help on &amp;this</source>
        <translation>Hilfe &amp;hierzu</translation>
    </message>
    <message>
        <source>&amp;What is this?</source>
        <translation>&amp;Was ist das?</translation>
    </message>
    <message>
        <source>&amp;Keys ...</source>
        <translation>&amp;Tasten ...</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Taste</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was sie tut</translation>
    </message>
    <message>
        <source>&amp;Next area</source>
        <translation>&amp;Nächster Bereich</translation>
    </message>
    <message>
        <source>Pre&amp;vious area</source>
        <translation>&amp;Voriger Bereich</translation>
    </message>
    <message>
        <source>Export all questions into a new folder here</source>
        <translation>Alle Fragen in einen neuen Ordner hier exportieren</translation>
    </message>
    <message>
        <source>%1, answers</source>
        <translation>%1, Antworten</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>Not everything was exported.</source>
        <translation>Nicht alles wurde exportiert.</translation>
    </message>
    <message>
        <source>In a field: a step up or down</source>
        <translation>In einem Feld: ein Schritt auf oder ab</translation>
    </message>
    <message>
        <source>In a field: ten steps</source>
        <translation>In einem Feld: zehn Schritte</translation>
    </message>
    <message>
        <source>In a field: open its slider</source>
        <translation>In einem Feld: sein Schieberegler</translation>
    </message>
    <message>
        <source>In a field or table: its menu</source>
        <translation>In einem Feld oder einer Tabelle: ihr Menü</translation>
    </message>
    <message>
        <source>In a table: open the question that tells more</source>
        <translation>In einer Tabelle: die Frage öffnen, die mehr erzählt</translation>
    </message>
    <message>
        <source>In a table: copy what is selected</source>
        <translation>In einer Tabelle: kopieren, was gewählt ist</translation>
    </message>
    <message>
        <source>Export a&amp;ll questions ...</source>
        <translation>Alle Fragen ex&amp;portieren ...</translation>
    </message>
    <message>
        <source>&amp;Picture</source>
        <translation>&amp;Bild</translation>
    </message>
    <message>
        <source>A click on a rig&apos;s name takes it out of the pictures; Ctrl and the wheel zoom; a right click has more</source>
        <translation>Ein Klick auf den Namen einer Anlage nimmt sie aus den Bildern; Strg und das Rad vergrößern; ein Rechtsklick bietet mehr</translation>
    </message>
    <message>
        <source>Sheet to &amp;brew by</source>
        <translation>Blatt zum Br&amp;auen</translation>
    </message>
    <message>
        <source>HTML pages, for a phone too (*.html)</source>
        <translation>HTML-Seiten, auch fürs Telefon (*.html)</translation>
    </message>
    <message>
        <source>Save a sheet to brew by</source>
        <translation>Ein Blatt zum Brauen sichern</translation>
    </message>
    <message>
        <source>The sheet was not saved.</source>
        <translation>Das Blatt wurde nicht gesichert.</translation>
    </message>
    <message>
        <source>Does it match what I measured? ...</source>
        <translation>Stimmt es mit meinen Messungen überein? ...</translation>
    </message>
</context>
<context>
    <name>gui::PlanChart</name>
    <message>
        <source>Zoom &amp;in</source>
        <translation>&amp;Vergrößern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>&amp;Whole picture</source>
        <translation>&amp;Ganzes Bild</translation>
    </message>
    <message>
        <source>&amp;Stage</source>
        <translation>&amp;Schritt</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Gezeichnet</translation>
    </message>
    <message>
        <source>&amp;Copy picture</source>
        <translation>&amp;Bild kopieren</translation>
    </message>
    <message>
        <source>&amp;How was this computed?</source>
        <translation>&amp;Wie wurde das berechnet?</translation>
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
        <translation>An&amp;lagen</translation>
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
    <message>
        <source>The same at: %1</source>
        <translation>Ebenso bei: %1</translation>
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
    <name>gui::ReadingsWindow</name>
    <message>
        <source>Does it match what I measured?</source>
        <translation>Stimmt es mit meinen Messungen überein?</translation>
    </message>
    <message>
        <source>Read o&amp;f</source>
        <translation>Abgelesen &amp;von</translation>
    </message>
    <message>
        <source>The rig that was read of</source>
        <translation>Die Anlage, von der abgelesen wurde</translation>
    </message>
    <message>
        <source>A line for each look: the time, then what was read. A logger&apos;s lines can be pasted as they are.</source>
        <translation>Eine Zeile je Blick: die Uhrzeit, dann das Abgelesene. Zeilen eines Loggers können so eingefügt werden, wie sie sind.</translation>
    </message>
    <message>
        <source>Lines of readings</source>
        <translation>Zeilen mit Ablesungen</translation>
    </message>
    <message>
        <source>for example</source>
        <translation>zum Beispiel</translation>
    </message>
    <message>
        <source>What is wrong with the lines</source>
        <translation>Was an den Zeilen nicht stimmt</translation>
    </message>
    <message>
        <source>The thermometer was held into &amp;ice or boiling water</source>
        <translation>Das Thermometer wurde in &amp;Eis oder kochendes Wasser gehalten</translation>
    </message>
    <message>
        <source>It was s&amp;tirred before each look</source>
        <translation>Vor jedem Blick wurde ge&amp;rührt</translation>
    </message>
    <message>
        <source>Leave out lines that are &amp;wrong</source>
        <translation>&amp;Falsche Zeilen auslassen</translation>
    </message>
    <message>
        <source>&amp;Open a file ...</source>
        <translation>&amp;Datei öffnen ...</translation>
    </message>
    <message>
        <source>&amp;Save the lines ...</source>
        <translation>Zeilen &amp;speichern ...</translation>
    </message>
    <message>
        <source>&amp;Keep with the kettle</source>
        <translation>Beim &amp;Kessel behalten</translation>
    </message>
    <message>
        <source>Writes what was learned into the plan, for every later day; Undo takes it back.</source>
        <translation>Schreibt das Gelernte in den Plan, für jeden späteren Tag; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>What the readings say</source>
        <translation>Was die Ablesungen sagen</translation>
    </message>
    <message>
        <source>What is typed here could not be kept: %1.</source>
        <translation>Das hier Getippte konnte nicht aufbewahrt werden: %1.</translation>
    </message>
    <message>
        <source>The readings were not opened.</source>
        <translation>Die Ablesungen wurden nicht geöffnet.</translation>
    </message>
    <message>
        <source>The readings were not saved.</source>
        <translation>Die Ablesungen wurden nicht gespeichert.</translation>
    </message>
    <message>
        <source>Open readings</source>
        <translation>Ablesungen öffnen</translation>
    </message>
    <message>
        <source>Readings (*.csv *.txt *.log);;All files (*)</source>
        <translation>Ablesungen (*.csv *.txt *.log);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Save the lines</source>
        <translation>Zeilen speichern</translation>
    </message>
    <message>
        <source>Readings (*.csv)</source>
        <translation>Ablesungen (*.csv)</translation>
    </message>
    <message>
        <source>The plan has to be right first: its forms say what is wrong.</source>
        <translation>Erst muss der Plan stimmen: Seine Formulare sagen, was nicht stimmt.</translation>
    </message>
    <message>
        <source>Nothing was read yet.</source>
        <translation>Noch wurde nichts abgelesen.</translation>
    </message>
    <message>
        <source>These lines cannot be used yet; what is wrong stands beside them.</source>
        <translation>Diese Zeilen sind noch nicht zu gebrauchen; was nicht stimmt, steht daneben.</translation>
    </message>
    <message>
        <source>It could not be worked out: %1.</source>
        <translation>Es ließ sich nicht ausrechnen: %1.</translation>
    </message>
    <message>
        <source>… and more</source>
        <translation>… und weitere</translation>
    </message>
    <message>
        <source>Line %1:</source>
        <translation>Zeile %1:</translation>
    </message>
    <message>
        <source>The same numbers as a table</source>
        <translation>Dieselben Zahlen als Tabelle</translation>
    </message>
    <message>
        <source>Nothing was kept.</source>
        <translation>Nichts wurde behalten.</translation>
    </message>
    <message>
        <source>These readings tell neither its losses nor what its open surface gives off.</source>
        <translation>Diese Ablesungen sagen weder, was er verliert, noch was seine offene Oberfläche abgibt.</translation>
    </message>
    <message>
        <source>Keep what was read</source>
        <translation>Das Abgelesene behalten</translation>
    </message>
</context>
<context>
    <name>gui::Report</name>
    <message>
        <source>A brew day</source>
        <translation>Ein Brautag</translation>
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
        <source>What was put in</source>
        <translation>Was hineinging</translation>
    </message>
    <message>
        <source>What is taken for granted</source>
        <translation>Was vorausgesetzt wird</translation>
    </message>
    <message>
        <source>the bundled example</source>
        <translation>das mitgelieferte Beispiel</translation>
    </message>
    <message>
        <source>Before anything else</source>
        <translation>Zuallererst</translation>
    </message>
    <message>
        <source>Heat Ledger %1. Planning figures, not an installation guide: heed the cautions on the first and the last page.</source>
        <translation>Heat Ledger %1. Zahlen zur Planung, keine Installationsanleitung: Beachten Sie die Warnungen auf der ersten und der letzten Seite.</translation>
    </message>
    <message>
        <source>Take care with every brew</source>
        <translation>Vorsicht bei jedem Sud</translation>
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
        <source>Not modelled: rinse water, hops and trub, lifting the lid to stir, chilling.</source>
        <translation>Nicht berechnet: Nachgüsse, Hopfen und Trub, Öffnen des Deckels zum Rühren, Kühlen.</translation>
    </message>
    <message>
        <source>What a rig does compared with another one is better known than either alone: most errors are common to both.</source>
        <translation>Was eine Anlage im Vergleich zu einer anderen tut, ist besser bekannt als beide für sich: Die meisten Fehler sind beiden gemeinsam.</translation>
    </message>
    <message>
        <source>Air of the room</source>
        <translation>Luft des Raums</translation>
    </message>
    <message>
        <source>%1, %2 exchanged with outdoors</source>
        <translation>%1, davon %2 mit außen getauscht</translation>
    </message>
    <message>
        <source>%1, %2 exchanged with outdoors; assumed</source>
        <translation>%1, davon %2 mit außen getauscht; angenommen</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Außen</translation>
    </message>
    <message>
        <source>A hood takes of the vapour</source>
        <translation>Eine Haube erfasst vom Dampf</translation>
    </message>
    <message>
        <source>Electrical rules</source>
        <translation>Elektrische Regeln</translation>
    </message>
    <message>
        <source>those of each rig&apos;s circuit</source>
        <translation>die des Stromkreises jeder Anlage</translation>
    </message>
    <message>
        <source>one outlet alone</source>
        <translation>eine einzige Steckdose</translation>
    </message>
    <message>
        <source>several outlets</source>
        <translation>mehrere Steckdosen</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>pump of %1</source>
        <translation>Pumpe von %1</translation>
    </message>
    <message>
        <source>others&apos; %1</source>
        <translation>anderes mit %1</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>on two circuits: %1</source>
        <translation>an zwei Stromkreisen: %1</translation>
    </message>
    <message>
        <source>in series: %1</source>
        <translation>in Reihe: %1</translation>
    </message>
    <message>
        <source>in parallel: %1</source>
        <translation>parallel: %1</translation>
    </message>
    <message>
        <source>Batches a year</source>
        <translation>Sude im Jahr</translation>
    </message>
    <message>
        <source>Second circuit</source>
        <translation>Zweiter Stromkreis</translation>
    </message>
    <message>
        <source>Outlet</source>
        <translation>Steckdose</translation>
    </message>
    <message>
        <source>Beside the element on the circuit</source>
        <translation>Neben dem Heizelement am Stromkreis</translation>
    </message>
    <message>
        <source>The kettle&apos;s room stays as stated: it neither warms up nor steams up. What the vapour does to its air is a question of its own.</source>
        <translation>Für den Kessel bleibt der Raum wie angegeben: Er wird weder warm noch feucht. Was der Dampf mit seiner Luft macht, ist eine eigene Frage.</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>Goes in during the boil</source>
        <translation>Kommt während des Kochens hinein</translation>
    </message>
    <message>
        <source>Hot stand</source>
        <translation>Heißhalten</translation>
    </message>
    <message>
        <source>Pitching</source>
        <translation>Anstellen</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <translation>%1, mit %2</translation>
    </message>
    <message>
        <source>not by electricity</source>
        <translation>nicht mit Strom</translation>
    </message>
    <message>
        <source>on the same circuit</source>
        <translation>am selben Stromkreis</translation>
    </message>
    <message>
        <source>on another circuit</source>
        <translation>an einem anderen Stromkreis</translation>
    </message>
    <message>
        <source>%1, %2, efficiency %3</source>
        <translation>%1, %2, Wirkungsgrad %3</translation>
    </message>
    <message>
        <source>power not known</source>
        <translation>Leistung nicht bekannt</translation>
    </message>
    <message>
        <source>Rinsing water</source>
        <translation>Nachgusswasser</translation>
    </message>
    <message>
        <source>Rinsing water heated</source>
        <translation>Nachgusswasser erhitzt</translation>
    </message>
    <message>
        <source>Rinse reaches of the held wort</source>
        <translation>Nachguss erreicht von der gehaltenen Würze</translation>
    </message>
    <message>
        <source>Grain drains</source>
        <translation>Malz tropft ab</translation>
    </message>
    <message>
        <source>%1, element on</source>
        <translation>%1, Heizelement an</translation>
    </message>
    <message>
        <source>%1, element off</source>
        <translation>%1, Heizelement aus</translation>
    </message>
    <message>
        <source>rinsing water&apos;s %1</source>
        <translation>%1 für das Nachgusswasser</translation>
    </message>
    <message>
        <source>rinsing water&apos;s heater, power not known</source>
        <translation>Heizgerät für das Nachgusswasser, Leistung nicht bekannt</translation>
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
        <source>What to do with this rig</source>
        <translation>Was mit dieser Anlage geschehen soll</translation>
    </message>
    <message>
        <source>Remove (a plan needs at least one rig)</source>
        <translation>Entfernen (ein Plan braucht mindestens eine Anlage)</translation>
    </message>
    <message>
        <source>adding %1</source>
        <translation>Hinzufügen: %1</translation>
    </message>
    <message>
        <source>duplicating %1</source>
        <translation>Verdoppeln: %1</translation>
    </message>
    <message>
        <source>moving %1</source>
        <translation>Verschieben: %1</translation>
    </message>
    <message>
        <source>removing %1</source>
        <translation>Entfernen: %1</translation>
    </message>
    <message>
        <source>Same, with ...</source>
        <translation>Wie dieser, aber ...</translation>
    </message>
    <message>
        <source>%1, otherwise</source>
        <translation>%1, anders</translation>
    </message>
    <message>
        <source>All rows</source>
        <translation>Alle Zeilen</translation>
    </message>
    <message>
        <source>Essentials</source>
        <translation>Das Wesentliche</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>Rows that are shown</source>
        <translation>Gezeigte Zeilen</translation>
    </message>
    <message>
        <source>All rows, the few that most people ask about, or those in which the rigs differ. Rows with a problem are always shown.</source>
        <translation>Alle Zeilen, die wenigen, nach denen die meisten fragen, oder die, in denen die Anlagen sich unterscheiden. Zeilen mit einem Problem sind immer zu sehen.</translation>
    </message>
    <message>
        <source>%1 the same for all rigs</source>
        <translation>%1 für alle Anlagen gleich</translation>
    </message>
    <message>
        <source>All as %1</source>
        <translation>Alle wie %1</translation>
    </message>
    <message>
        <source>All as %1: %2</source>
        <translation>Alle wie %1: %2</translation>
    </message>
</context>
<context>
    <name>gui::RigSentences</name>
    <message>
        <source>+ same, with ...</source>
        <translation>+ wie dieser, aber ...</translation>
    </message>
    <message>
        <source>One more rig, the same as the one compared with but for what you then say</source>
        <translation>Noch ein Kessel, wie der, mit dem verglichen wird, bis auf das, was Sie dann sagen</translation>
    </message>
</context>
<context>
    <name>gui::SearchBar</name>
    <message>
        <source>%1 ways: %p %</source>
        <translation>%1 Möglichkeiten: %p %</translation>
    </message>
    <message>
        <source>Search for what helps most</source>
        <translation>Suche nach dem, was vor allem hilft</translation>
    </message>
    <message>
        <source>Show what &amp;was found</source>
        <translation>Zeigen, was ge&amp;funden ist</translation>
    </message>
    <message>
        <source>Ends the search; what was found by now stays, marked as a part</source>
        <translation>Beendet die Suche; was bis jetzt gefunden ist, bleibt, als Teil gekennzeichnet</translation>
    </message>
</context>
<context>
    <name>gui::Solver</name>
    <message>
        <source>there was not enough memory for it</source>
        <translation>der Speicher reichte dafür nicht</translation>
    </message>
    <message>
        <source>the system had no thread left for it</source>
        <translation>das System hatte keinen Thread dafür übrig</translation>
    </message>
</context>
<context>
    <name>gui::StartSheet</name>
    <message>
        <source>A new plan</source>
        <translation>Ein neuer Plan</translation>
    </message>
    <message>
        <source>How to begin</source>
        <translation>Wie es beginnt</translation>
    </message>
    <message>
        <source>&amp;See an example</source>
        <translation>Ein Bei&amp;spiel ansehen</translation>
    </message>
    <message>
        <source>&amp;My kettle</source>
        <translation>&amp;Mein Kessel</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Öffnen</translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation>&amp;Nicht jetzt</translation>
    </message>
    <message>
        <source>Each is a brew day of its own; a copy of it opens.</source>
        <translation>Jedes ist ein Brautag für sich; geöffnet wird eine Kopie.</translation>
    </message>
    <message>
        <source>Examples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>Plans opened before</source>
        <translation>Früher geöffnete Pläne</translation>
    </message>
    <message>
        <source>Another file …</source>
        <translation>Eine andere Datei …</translation>
    </message>
    <message>
        <source>No plan was opened before.</source>
        <translation>Es wurde noch kein Plan geöffnet.</translation>
    </message>
    <message>
        <source>Plans opened before, the latest first:</source>
        <translation>Früher geöffnete Pläne, der letzte zuerst:</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Eine &amp;Kopie öffnen</translation>
    </message>
    <message>
        <source>&amp;Use this kettle</source>
        <translation>Diesen Kessel &amp;verwenden</translation>
    </message>
    <message>
        <source>Open &amp;it</source>
        <translation>&amp;Diesen öffnen</translation>
    </message>
</context>
<context>
    <name>gui::ValueSlider</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
</TS>
