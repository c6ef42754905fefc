// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/quantities/quantity_text.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <clocale>
#include <cmath>
#include <string>
#include <tuple>

#include "rigs/documents/quantity_problems.hpp"
#include "tests/support/within.hpp"

namespace {

using namespace physics;
using namespace rigs;

using AllKinds = std::tuple<double, FractionPerTime, Power, Energy, Volume, Mass, Temperature,
                            TemperatureDifference, TemperatureRate, Time, Length, Area, Velocity,
                            Voltage, Current, Resistance, ResistancePerLength, Pressure,
                            ThermalInsulance, ThermalConductivity, HeatTransferCoefficient,
                            ThermalConductance, HeatCapacity, SpecificHeat, SpecificEnergy,
                            HeatFlux, MassDensity, VolumePerMass, MassFlow, MassFlux, VolumeFlow>;

// Why a text is refused, in words.
template <class Q>
std::string refusal(const std::string& text) {
  const auto fault = parseQuantity<Q>(text).fault;
  return fault ? inEnglish(quantityProblem(*fault, text, kKindOf<Q>)) : std::string();
}

template <class Use>
void forEachKind(Use use) {
  std::apply([&](auto... sample) { (use(sample), ...); }, AllKinds{});
}

template <class Q>
struct Row {
  const char* text;
  Q expected;
};

// Unit conversions are exact by definition; what is left is rounding.
template <class Q>
void expectReadings(std::initializer_list<Row<Q>> rows) {
  for (const auto& row : rows) {
    SCOPED_TRACE(row.text);
    const auto parsed = parseQuantity<Q>(row.text);
    EXPECT_TRUE(parsed) << refusal<Q>(row.text);
    if (!parsed) continue;
    const double expected = detail::siNumber(row.expected);
    EXPECT_NEAR(detail::siNumber(*parsed), expected, 1e-13 * std::abs(expected));
    EXPECT_FALSE(parsed.fault);
  }
}

struct Refusal {
  const char* text;
  const char* problem;
};

template <class Q>
void expectRefusals(std::initializer_list<Refusal> rows) {
  for (const auto& row : rows) {
    EXPECT_FALSE(parseQuantity<Q>(row.text)) << row.text;
    EXPECT_EQ(refusal<Q>(row.text), row.problem);
  }
}

TEST(QuantityText, ReadsWhatBrewersWrite) {
  expectReadings<Power>({{"3000 W", watts(3000.0)},
                         {"5,5 kW", watts(5500.0)},
                         {"5.5kW", watts(5500.0)},
                         {"1e3 W", watts(1000.0)},
                         {"+2 kW", watts(2000.0)},
                         {"3 kilowatts", watts(3000.0)},
                         {"8200 Btu/h", watts(8200.0 * 1055.05585262 / 3600.0)}});
  expectReadings<Energy>(
      {{"2.4 kWh", kilowattHours(2.4)}, {"8200 Btu", joules(8200.0 * 1055.05585262)}});
  expectReadings<Volume>({{"27 L", litres(27.0)},
                          {"27 l", litres(27.0)},
                          {"500 ml", litres(0.5)},
                          {"0,355 m3", litres(355.0)},
                          {"10 gal", litres(37.85411784)},
                          {"10 US gal", litres(37.85411784)},
                          {"8 imp gal", litres(36.36872)},
                          {"8 qt", litres(7.570823568)},
                          {"8 imp qt", litres(9.09218)},
                          {"16 fl oz", litres(0.473176473)},
                          {"20 imp fl oz", litres(0.56826125)},
                          {"2 cups", litres(0.473176473)}});
  expectReadings<Mass>({{"6.5 kg", kilograms(6.5)},
                        {"6.5 Kg", kilograms(6.5)},
                        {"500 g", kilograms(0.5)},
                        {"14 lb 5 oz", kilograms(14.3125 * 0.45359237)},
                        {"14lb5oz", kilograms(14.3125 * 0.45359237)}});
  expectReadings<Time>({{"45 min", minutes(45.0)},
                        {"1 h 30 min", minutes(90.0)},
                        {"1h30min", minutes(90.0)},
                        {"1 h 05 min 10 s", seconds(3910.0)},
                        {"90min", minutes(90.0)},
                        {"1.5 hours", minutes(90.0)},
                        {"-1 h 30 min", minutes(-90.0)}});
  expectReadings<Length>({{"10 mm", millimetres(10.0)},
                          {"0.355 m", metres(0.355)},
                          {"14 in", millimetres(355.6)},
                          {"1/2 in", millimetres(12.7)},
                          {"1 1/2 in", millimetres(38.1)},
                          {"1½\"", millimetres(38.1)},
                          {"-1 1/2 in", millimetres(-38.1)},
                          {"5' 10\"", metres(1.778)},
                          {"5ft2in", metres(1.5748)},
                          {"2950 ft", metres(899.16)}});
  expectReadings<ThermalConductivity>({{"0.035 W/(m K)", wattsPerMetreKelvin(0.035)},
                                       {"0.035 W/m/K", wattsPerMetreKelvin(0.035)},
                                       {"0.035 W m⁻¹ K⁻¹", wattsPerMetreKelvin(0.035)},
                                       {"0.035 W m-1 K-1", wattsPerMetreKelvin(0.035)}});
  expectReadings<HeatTransferCoefficient>({{"10 W/(m2 K)", perSquareMetreKelvin(10.0)},
                                           {"10 W/m2/K", perSquareMetreKelvin(10.0)},
                                           {"10 W/(m^2*K)", perSquareMetreKelvin(10.0)},
                                           {"10 W/(m²·°C)", perSquareMetreKelvin(10.0)}});
  expectReadings<double>(
      {{"4.5 %", 0.045}, {"50%", 0.5}, {"0.5", 0.5}, {"1/4", 0.25}, {"150 %", 1.5}});
  expectReadings<FractionPerTime>(
      {{"8 %/h", 0.08 / hours(1.0)}, {"8 % per hour", 0.08 / hours(1.0)}});
  expectReadings<VolumePerMass>({{"0.8 L/kg", litresPerKilogram(0.8)}});
  expectReadings<MassFlow>({{"2 kg/h", kilogramsPerHour(2.0)}});
  expectReadings<VolumeFlow>({{"3.5 L/h", litresPerHour(3.5)}});
  expectReadings<Pressure>({{"1013 hPa", pascals(101300.0)}, {"1013 mbar", pascals(101300.0)}});
  expectReadings<Resistance>({{"17.6 Ω", ohms(17.6)}, {"17.6 ohm", ohms(17.6)}});
}

TEST(QuantityText, TellsPointsOnTheTemperatureScaleFromDistances) {
  expectReadings<Temperature>({{"152 °F", celsius(200.0 / 3.0)},
                               {"152 F", celsius(200.0 / 3.0)},
                               {"152° F", celsius(200.0 / 3.0)},
                               {"66.7 C", celsius(66.7)},
                               {"66,7 ºC", celsius(66.7)},
                               {"-40 ℉", celsius(-40.0)},
                               {"−40 degC", celsius(-40.0)},
                               {"339 K", kelvin(339.0)}});
  expectReadings<TemperatureDifference>(
      {{"9 °F", kelvins(5.0)}, {"5 °C", kelvins(5.0)}, {"5 K", kelvins(5.0)}});
  expectReadings<TemperatureRate>({{"9 °F/min", kelvins(5.0) / minutes(1.0)},
                                   {"5 °C/min", kelvins(5.0) / minutes(1.0)},
                                   {"5 K/min", kelvins(5.0) / minutes(1.0)}});
}

// A US "R 1.8" is 1.8 h ft2 °F/Btu; the factor 0.1761101838 m2 K/W is from NIST SP 811 (2008),
// app. B.8, printed as 1.761102 E-01.
TEST(QuantityText, ReadsRValuesAsPrintedOnTheJacket) {
  for (const char* text : {"R 1", "R-1", "R1", "r 1", "1 ft2*h*degF/Btu", "1 h ft2 F/Btu",
                           "1 h·ft²·°F/Btu", "1 ft2-h-F/Btu"}) {
    SCOPED_TRACE(text);
    const auto parsed = parseQuantity<ThermalInsulance>(text);
    ASSERT_TRUE(parsed) << refusal<ThermalInsulance>(text);
    EXPECT_WITHIN(*parsed, squareMetreKelvinsPerWatt(0.1761102), squareMetreKelvinsPerWatt(5e-8));
  }
  expectReadings<ThermalInsulance>({{"RSI 0.3", squareMetreKelvinsPerWatt(0.3)},
                                    {"0.3 m2*K/W", squareMetreKelvinsPerWatt(0.3)},
                                    {"0.3 m2K/W", squareMetreKelvinsPerWatt(0.3)},
                                    {"0.3 m²·K/W", squareMetreKelvinsPerWatt(0.3)}});
}

// ASTM B258 tables, from memory: 14 AWG is 2.08 mm2, 10 AWG 5.26 mm2, 4/0 AWG 107.2 mm2.
TEST(QuantityText, KnowsWireGauges) {
  const std::initializer_list<std::tuple<const char*, double, double>> rows{
      {"14 AWG", 2.08, 0.005}, {"AWG 10", 5.26, 0.005}, {"4/0 AWG", 107.2, 0.05}};
  for (const auto& [text, squareMillimetres, half] : rows) {
    const auto parsed = parseQuantity<Area>(text);
    ASSERT_TRUE(parsed) << refusal<Area>(text);
    EXPECT_WITHIN(*parsed, squareMetres(1e-6 * squareMillimetres), squareMetres(1e-6 * half));
  }
  expectRefusals<Area>(
      {{"50 AWG", R"("50 AWG" is no wire gauge; they run from "4/0 AWG" to "40 AWG")"}});
}

TEST(QuantityText, SaysWhatIsMissing) {
  expectRefusals<Power>(
      {{"3000", R"("3000" has no unit; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")"},
       {"", R"("" is empty; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")"},
       {" ", R"(" " is empty; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")"},
       {"27 L", R"("27 L" is a volume; a power is needed, e.g. "3000 W")"},
       {"5 kg m", R"("5 kg m" has a unit that does not measure a power, e.g. "3000 W")"},
       {"W",
        R"("W" does not start with a number; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")"}});
  expectRefusals<Time>(
      {{"45 m", R"("45 m" is a length; a time is needed, e.g. "1 h 30 min"; minutes are "min")"},
       {"1 h 30",
        R"("1 h 30" ends with a number without a unit; write it with one of min, h, s, e.g. "1 h 30 min")"},
       {"1:30 h", R"("1:30 h" has a ":"; write times like "1 h 30 min")"}});
  expectRefusals<Volume>(
      {{"12 oz",
        R"("12 oz" is a mass; a volume is needed, e.g. "27 L"; fluid ounces are "fl oz")"}});
  expectRefusals<double>({{"45", R"("45" is not between 0 and 1; write "45 %" for percent)"}});
  expectRefusals<Temperature>(
      {{"-300 °C", R"("-300 °C" lies below absolute zero)"},
       {"66", R"("66" has no unit; write it with one of °C, °F, K, e.g. "66 °C")"},
       {"5 °", R"("5 °" has "°", which does not say whose degrees; write "°C" or "°F")"},
       {"5 k",
        R"("5 k" has "k", which may be kelvin or a thousand; write "K" for kelvin, or the number in full)"}});
}

TEST(QuantityText, RefusesNumbersThatReadersTakeDifferently) {
  expectRefusals<Power>(
      {{"1,250 W", R"("1,250 W" can be read as 1250 or as 1.250; write one of these)"},
       {"1,250.5 W",
        R"("1,250.5 W" has more than one decimal sign; write it without grouping the digits, e.g. "1250.5")"},
       {"1.250,5 W",
        R"("1.250,5 W" has more than one decimal sign; write it without grouping the digits, e.g. "1250.5")"},
       {"1 250 W", R"("1 250 W" has its digits in groups; write them without spaces)"},
       {"1\u202f250 W", "\"1\u202f250 W\" has its digits in groups; write them without spaces"}});
  expectReadings<Length>(
      {{"0,355 m", metres(0.355)}, {"1.250 m", metres(1.25)}, {"1,25 m", metres(1.25)}});
}

TEST(QuantityText, RefusesWhatIsNoNumber) {
  const std::string noStart =
      R"( does not start with a number; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")";
  for (const char* text : {"nan W", "inf W", "-inf W", "e3 W", "- 5 W", "--5 W"})
    EXPECT_EQ(refusal<Power>(text), '"' + std::string(text) + '"' + noStart);
  expectRefusals<Power>(
      {{"0x10 W",
        R"("0x10 W" has the unit "x", which is not known; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")"},
       {"1e999 W", R"("1e999 W" is too large or too small a number)"},
       {"1e308 kW", R"("1e308 kW" is too large or too small a number)"},
       {"1/0 W", R"("1/0 W" has a fraction without a value)"}});
}

TEST(QuantityText, RefusesCapitalsThatChangeTheSize) {
  expectRefusals<Power>(
      {{"3 mw",
        R"("3 mw" has the unit "mw", where capitals change the size; write "MW" or "mW")"}});
  expectRefusals<Length>(
      {{"5 MM", R"("5 MM" has the unit "MM", where capitals change the size; write "mm")"}});
  expectRefusals<Mass>(
      {{"3 Mg", R"("3 Mg" has the unit "Mg", where capitals change the size; write "mg")"},
       {"1 ton", R"("1 ton" has "ton", which may be 907, 1000 or 1016 kg; write kg or t)"}});
  expectReadings<Power>({{"3 KW", watts(3000.0)}, {"3 MW", watts(3e6)}, {"3 mW", watts(3e-3)}});
}

TEST(QuantityText, RefusesUnitsThatCanBeReadInTwoWays) {
  expectRefusals<HeatTransferCoefficient>(
      {{"10 W/m2 K",
        R"~("10 W/m2 K" can be read in two ways; put all that stands below the "/" in brackets, e.g. "W/(m2 K)")~"},
       {"10 W/m²K",
        R"~("10 W/m²K" can be read in two ways; put all that stands below the "/" in brackets, e.g. "W/(m²K)")~"}});
  expectRefusals<ThermalConductivity>(
      {{"0.035 W/mK",
        R"("0.035 W/mK" has the unit "mK", which may be two units; write "m K" with a space, in brackets if it stands below a "/")"}});
  expectRefusals<ThermalInsulance>(
      {{"R 1.8 m2 K/W",
        R"("R 1.8 m2 K/W" has more after the number; "R" already means ft²·h·°F/Btu)"}});
}

TEST(QuantityText, RefusesBrokenUnits) {
  const std::string how = R"(; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")";
  EXPECT_EQ(refusal<Power>("5 (W"), "\"5 (W\" has a \"(\" without its \")\"" + how);
  EXPECT_EQ(refusal<Power>("5 )W"), "\"5 )W\" has a \")\" without its \"(\"" + how);
  EXPECT_EQ(refusal<Power>("5 W/"), R"("5 W/" has nothing after the last "/")" + how);
  EXPECT_EQ(refusal<Power>("5 *W"), R"("5 *W" has "*" where a unit should stand)" + how);
  EXPECT_EQ(refusal<Power>("5 W^9"), R"("5 W^9" has a "^" without a power from 1 to 4)" + how);
  EXPECT_EQ(refusal<Power>("5 ((W))"), R"~("5 ((W))" has brackets within brackets)~" + how);
  EXPECT_EQ(refusal<Power>("5 W é"),
            R"("5 W é" holds a character that does not belong in a quantity)" + how);
  EXPECT_EQ(refusal<Power>("5 W W W W W W W W W"),
            R"("5 W W W W W W W W W" has too many units)" + how);
  EXPECT_FALSE(parseQuantity<double>("0²"));  // a raised 2 is no digit of the number
}

TEST(QuantityText, JoinsOnlyUnitsThatFollowEachOther) {
  expectRefusals<Time>(
      {{"1 h 90 min", R"("1 h 90 min" has a part that is not smaller than the unit before it)"},
       {"30 min 1 h", R"("30 min 1 h" has a part that is not smaller than the unit before it)"},
       {"1.5 h 30 min",
        R"("1.5 h 30 min" has a broken number before its last unit; write one number and one unit)"},
       {"1 h -30 min",
        R"("1 h -30 min" has more after its unit; write it with one of min, h, s, e.g. "1 h 30 min")"}});
  expectRefusals<Mass>(
      {{"1 kg 200 g",
        R"("1 kg 200 g" joins units that are not written one after another; write it with one of kg, g, lb, oz, e.g. "6.5 kg")"}});
  expectRefusals<Power>(
      {{"3 kW 200 W",
        R"("3 kW 200 W" has more after its unit; write it with one of W, kW, hp, Btu/h, e.g. "3000 W")"}});
}

TEST(QuantityText, RefusesLongTextWithAShortQuotation) {
  EXPECT_EQ(refusal<Power>(std::string(100000, '1') + " W"),
            '"' + std::string(59, '1') +
                "…\" is too long for a quantity; write it with one of W, kW, "
                "hp, Btu/h, e.g. \"3000 W\"");
}

TEST(QuantityText, PrintsForReadersOfBothSystems) {
  const auto both = [](const auto& q) {
    return format(q, UnitSystem::SI) + " | " + format(q, UnitSystem::UsCustomary);
  };
  EXPECT_EQ(both(watts(850.0)), "850 W | 850 W");
  EXPECT_EQ(both(watts(5500.0)), "5.5 kW | 5.5 kW");
  EXPECT_EQ(both(kilowattHours(2.345)), "2.35 kWh | 2.35 kWh");
  EXPECT_EQ(both(litres(27.0)), "27 L | 7.13 US gal");
  EXPECT_EQ(both(litres(0.25)), "250 mL | 8.45 US fl oz");
  EXPECT_EQ(both(kilograms(6.5)), "6.5 kg | 14.3 lb");
  EXPECT_EQ(both(kilograms(0.03)), "30 g | 1.06 oz");
  EXPECT_EQ(both(celsius(66.7)), "66.7 °C | 152.1 °F");
  EXPECT_EQ(both(celsius(100.0)), "100 °C | 212 °F");
  EXPECT_EQ(both(kelvins(5.0)), "5 K | 9 °F");
  EXPECT_EQ(both(millimetres(10.0)), "10 mm | 0.394 in");
  EXPECT_EQ(both(millimetres(355.6)), "35.6 cm | 14 in");
  EXPECT_EQ(both(metres(900.0)), "900 m | 2953 ft");
  EXPECT_EQ(both(squareMetreKelvinsPerWatt(0.317)), "0.317 m²·K/W | 1.8 ft²·h·°F/Btu");
  EXPECT_EQ(both(kilogramsPerHour(2.0)), "2 kg/h | 4.41 lb/h");
  EXPECT_EQ(both(litresPerHour(3.5)), "3.5 L/h | 0.925 US gal/h");
  EXPECT_EQ(both(pascals(101325.0)), "101 kPa | 29.9 inHg");
  EXPECT_EQ(both(litresPerKilogram(2.6)), "2.6 L/kg | 1.25 US qt/lb");
  EXPECT_EQ(both(0.045), "4.5 % | 4.5 %");
  EXPECT_EQ(format(watts(5512.3), UnitSystem::SI, {.significantDigits = 5, .decimals = {}}),
            "5.5123 kW");
  EXPECT_EQ(format(litres(27.0), UnitSystem::SI, {.decimals = 1}), "27.0 L");
}

TEST(QuantityText, CarriesWhenRounding) {
  EXPECT_EQ(format(watts(999.7), UnitSystem::SI), "1 kW");
  EXPECT_EQ(format(watts(-999.7), UnitSystem::SI), "-1 kW");
  EXPECT_EQ(format(seconds(45.0), UnitSystem::SI), "45 s");
  EXPECT_EQ(format(seconds(59.6), UnitSystem::SI), "1 min");
  EXPECT_EQ(format(seconds(750.0), UnitSystem::SI), "12 min 30 s");
  EXPECT_EQ(format(seconds(3599.6), UnitSystem::SI), "1 h");
  EXPECT_EQ(format(minutes(65.0), UnitSystem::SI), "1 h 05 min");
  EXPECT_EQ(format(seconds(7199.0), UnitSystem::SI), "2 h");
  EXPECT_EQ(format(minutes(-90.0), UnitSystem::SI), "-1 h 30 min");
  EXPECT_EQ(formatNumber(9.996), "10");
  EXPECT_EQ(formatNumber(1234.5), "1234");
}

TEST(QuantityText, NeverPrintsANegativeZeroOrANonNumber) {
  EXPECT_EQ(format(watts(-0.0), UnitSystem::SI), "0 W");
  EXPECT_EQ(format(celsius(-0.01), UnitSystem::SI), "0 °C");
  EXPECT_EQ(formatValue(watts(-0.004), UnitSystem::SI, {.decimals = 2}), "0.00");
  EXPECT_EQ(formatExactly(watts(-0.0)), "0 W");
  EXPECT_EQ(format(watts(std::nan("")), UnitSystem::SI), "unknown");
  EXPECT_EQ(format(seconds(HUGE_VAL), UnitSystem::SI), "unknown");
}

TEST(QuantityText, KeepsOneUnitInAColumn) {
  EXPECT_EQ(unitLabel<Volume>(UnitSystem::UsCustomary), "US gal");
  EXPECT_EQ(unitLabel<Time>(UnitSystem::SI), "min");
  EXPECT_EQ(formatValue(litres(0.5), UnitSystem::SI), "0.5");
  EXPECT_EQ(formatValue(hours(1.5), UnitSystem::SI), "90");
  EXPECT_EQ(formatValue(celsius(-40.0), UnitSystem::UsCustomary, {.decimals = 1}), "-40.0");
  EXPECT_NEAR(numberIn(kelvins(5.0), UnitSystem::UsCustomary), 9.0, 1e-12);
}

TEST(QuantityText, AnswersInTheUnitOfTheQuestion) {
  EXPECT_EQ(formatLike(watts(50e3), "90 kW"), "50 kW");
  EXPECT_EQ(formatLike(celsius(100.0), "500 degF"), "212 °F");
  EXPECT_EQ(formatLike(litres(3.785411784), "900 gal"), "1 gal");
  EXPECT_EQ(formatLike(squareMetreKelvinsPerWatt(1.0), "R 90"), "5.68 ft²·h·°F/Btu");
  EXPECT_EQ(formatLike(minutes(90.0), "9 h 30 min"), "1 h 30 min");
  EXPECT_EQ(formatLike(0.5, "0.9"), "0.5");
  EXPECT_EQ(formatLike(watts(1500.0), "nonsense"), "1.5 kW");
}

TEST(QuantityText, ReadsItsOwnExamplesLabelsAndSpellings) {
  forEachKind([](auto sample) {
    using Q = decltype(sample);
    SCOPED_TRACE(inEnglish(kindName(kKindOf<Q>)));
    EXPECT_TRUE(parseQuantity<Q>(kindExample(kKindOf<Q>)));
    for (const UnitSystem system : {UnitSystem::SI, UnitSystem::UsCustomary})
      EXPECT_TRUE(parseQuantity<Q>("300 " + std::string(unitLabel<Q>(system))));
    for (const std::string& unit : knownUnits(kKindOf<Q>)) {
      const auto parsed = parseQuantity<Q>("300 " + unit);
      EXPECT_TRUE(parsed) << refusal<Q>("300 " + unit);
    }
    const std::string_view units = usualUnits(kKindOf<Q>);
    std::size_t from = 0;
    while (from < units.size()) {
      const std::size_t end = std::min(units.find(", ", from), units.size());
      const std::string unit(units.substr(from, end - from));
      if (!unit.starts_with("or as") && unit != "AWG") {
        const auto parsed = parseQuantity<Q>("300 " + unit);
        EXPECT_TRUE(parsed) << refusal<Q>("300 " + unit);
      }
      from = end + 2;
    }
  });
}

TEST(QuantityText, DoesNotLookAtTheLocale) {
  const std::string before = std::setlocale(LC_NUMERIC, nullptr);
  for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "C.UTF-8"}) {
    std::setlocale(LC_NUMERIC, name);
    EXPECT_EQ(format(watts(1500.0), UnitSystem::SI), "1.5 kW");
    EXPECT_EQ(parseQuantity<Power>("1.5 kW").quantity, watts(1500.0));
  }
  std::setlocale(LC_NUMERIC, before.c_str());
}

TEST(QuantityText, QuotesForeignTextSafely) {
  EXPECT_EQ(quotedText("a\x1b[31m\n\xff\u202e\u00e9"), "\"a?[31m???\u00e9\"");
  EXPECT_EQ(quotedText(std::string(70, 'x')), '"' + std::string(59, 'x') + "…\"");
}

// Any finite number with many or few digits, small and large.
rc::Gen<double> writableNumber() {
  return rc::gen::apply(
      [](int mantissa, int exponent) { return mantissa * std::pow(10.0, exponent); },
      rc::gen::inRange(-999999, 999999), rc::gen::inRange(-9, 9));
}

RC_GTEST_PROP(QuantityText, GivesTheSameBitsBack, ()) {
  const double n = *writableNumber();
  forEachKind([n](auto sample) {
    using Q = decltype(sample);
    // Fractions beyond 0..1 go through percent and may lose their last bit.
    const double si = std::is_same_v<Q, double>        ? std::fmod(std::abs(n), 1.0)
                      : std::is_same_v<Q, Temperature> ? std::abs(n)
                                                       : n;
    const auto parsed = parseQuantity<Q>(formatExactly(detail::fromSiNumber<Q>(si)));
    RC_ASSERT(!parsed.fault);
    RC_ASSERT(detail::siNumber(*parsed) == si);
  });
}

RC_GTEST_PROP(QuantityText, ReadsBackWhatItPrintsToThePrintedDigits, ()) {
  const double n = *writableNumber();
  const int digits = *rc::gen::inRange(1, 17);
  forEachKind([n, digits](auto sample) {
    using Q = decltype(sample);
    if (std::is_same_v<Q, Time>) return;  // printed to minutes, see the next property
    const double si = std::is_same_v<Q, Temperature> ? std::abs(n) : n;
    for (const UnitSystem system : {UnitSystem::SI, UnitSystem::UsCustomary}) {
      const std::string text = format(detail::fromSiNumber<Q>(si), system,
                                      {.significantDigits = digits, .decimals = {}});
      const auto parsed = parseQuantity<Q>(text);
      // Whole numbers below absolute zero by rounding are rightly refused.
      if (std::is_same_v<Q, Temperature> && !parsed) continue;
      RC_ASSERT(!parsed.fault);
      // Half a unit in the last printed digit; temperatures have a fixed number of decimals.
      const double half = std::is_same_v<Q, Temperature>
                              ? 0.51 * std::pow(10.0, -std::max(0, digits - 2)) + 1e-12
                              : 0.51 * std::pow(10.0, 1 - digits) * std::abs(si);
      RC_ASSERT(std::abs(detail::siNumber(*parsed) - si) <= half + 1e-14 * std::abs(si));
    }
  });
}

RC_GTEST_PROP(QuantityText, PrintsTimesToTheMinute, ()) {
  const double s = *rc::gen::inRange(-1000000, 1000000) / 7.0;
  const auto parsed = parseQuantity<Time>(format(seconds(s), UnitSystem::SI));
  RC_ASSERT(!parsed.fault);
  const double tolerance = std::abs(s) < 59.0 ? 0.05 : std::abs(s) < 3599.0 ? 0.5 : 30.0;
  RC_ASSERT(std::abs(inSeconds(*parsed) - s) <= tolerance + 1e-9);
}

RC_GTEST_PROP(QuantityText, SurvivesAnyBytes, (const std::string& bytes)) {
  forEachKind([&bytes](auto sample) {
    const auto parsed = parseQuantity<decltype(sample)>(bytes);
    RC_ASSERT(parsed.quantity.has_value() != parsed.fault.has_value());
  });
}

RC_GTEST_PROP(QuantityText, SurvivesAnyMixOfItsOwnParts, ()) {
  const auto parts = *rc::gen::container<std::vector<std::string>>(rc::gen::elementOf(
      std::vector<std::string>{"1",  "30", ".",   ",", " ",  "/", "(", ")", "*",   "^",   "-",
                               "e",  "R",  "AWG", "W", "kW", "m", "K", "h", "min", "lb",  "oz",
                               "US", "fl", "gal", "°", "F",  "%", "²", "½", "\"",  "per "}));
  std::string text;
  for (const auto& part : parts) text += part;
  forEachKind([&text](auto sample) {
    const auto parsed = parseQuantity<decltype(sample)>(text);
    RC_ASSERT(parsed.quantity.has_value() != parsed.fault.has_value());
    if (parsed) RC_ASSERT(std::isfinite(detail::siNumber(*parsed)));
  });
}

}  // namespace
