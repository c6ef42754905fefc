// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/documents/quantity_problems.hpp"

#include <array>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

#include "rigs/documents/problem_words.hpp"

namespace rigs {
namespace {

using Kind = QuantityFault::Kind;

// In the order of the enumeration.
constexpr std::array<Template<0>, 31> kKindNames{
    TOLD("Problem", "a share"),
    TOLD("Problem", "a share per time"),
    TOLD("Problem", "a power"),
    TOLD("Problem", "an energy"),
    TOLD("Problem", "a volume"),
    TOLD("Problem", "a mass"),
    TOLD("Problem", "a temperature"),
    TOLD("Problem", "a temperature difference"),
    TOLD("Problem", "a temperature change per time"),
    TOLD("Problem", "a time"),
    TOLD("Problem", "a length"),
    TOLD("Problem", "an area"),
    TOLD("Problem", "a speed"),
    TOLD("Problem", "a voltage"),
    TOLD("Problem", "a current"),
    TOLD("Problem", "an electrical resistance"),
    TOLD("Problem", "an electrical resistance per length"),
    TOLD("Problem", "a pressure"),
    TOLD("Problem", "a thermal resistance of an area"),
    TOLD("Problem", "a thermal conductivity"),
    TOLD("Problem", "a heat transfer coefficient"),
    TOLD("Problem", "a heat loss per degree"),
    TOLD("Problem", "a heat capacity"),
    TOLD("Problem", "a specific heat"),
    TOLD("Problem", "an energy per mass"),
    TOLD("Problem", "a power per area"),
    TOLD("Problem", "a density"),
    TOLD("Problem", "a volume per mass"),
    TOLD("Problem", "a mass per time"),
    TOLD("Problem", "a mass per area and time"),
    TOLD("Problem", "a volume per time"),
};
static_assert(kKindNames.size() == static_cast<std::size_t>(QuantityKind::VolumeFlow) + 1);

struct Sentence {
  Kind kind;
  Template<1> found;
};
constexpr std::array kAboutTheText{
    Sentence{Kind::Empty, TOLD("Problem", "%1 is empty")},
    Sentence{Kind::TooLong, TOLD("Problem", "%1 is too long for a quantity")},
    Sentence{Kind::ForeignCharacter,
             TOLD("Problem", "%1 holds a character that does not belong in a quantity")},
    Sentence{Kind::NoNumber, TOLD("Problem", "%1 does not start with a number")},
    Sentence{Kind::TwoDecimalSigns, TOLD("Problem", "%1 has more than one decimal sign")},
    Sentence{Kind::GroupedDigits, TOLD("Problem", "%1 has its digits in groups")},
    Sentence{Kind::NoSuchFraction, TOLD("Problem", "%1 has a fraction without a value")},
    Sentence{Kind::TooLargeOrSmall, TOLD("Problem", "%1 is too large or too small a number")},
    Sentence{Kind::BelowAbsoluteZero, TOLD("Problem", "%1 lies below absolute zero")},
    Sentence{Kind::NoShare, TOLD("Problem", "%1 is not between 0 and 1")},
    Sentence{Kind::NoWireGauge, TOLD("Problem", "%1 is no wire gauge")},
    Sentence{Kind::NoUnit, TOLD("Problem", "%1 has no unit")},
    Sentence{Kind::NotAUnit, TOLD("Problem", "%1 has something else than a unit after the number")},
    Sentence{Kind::Colon, TOLD("Problem", "%1 has a \":\"")},
    Sentence{Kind::MoreAfterNumber, TOLD("Problem", "%1 has more after the number")},
    Sentence{Kind::MoreAfterUnit, TOLD("Problem", "%1 has more after its unit")},
    Sentence{Kind::NumberWithoutUnit, TOLD("Problem", "%1 ends with a number without a unit")},
    Sentence{Kind::BrokenNumberInside,
             TOLD("Problem", "%1 has a broken number before its last unit")},
    Sentence{Kind::NoLadder,
             TOLD("Problem", "%1 joins units that are not written one after another")},
    Sentence{Kind::NotSmaller,
             TOLD("Problem", "%1 has a part that is not smaller than the unit before it")},
    Sentence{Kind::SlashInBrackets, TOLD("Problem", "%1 has a \"/\" within brackets")},
    Sentence{Kind::BracketsInBrackets, TOLD("Problem", "%1 has brackets within brackets")},
    Sentence{Kind::NotOpened, TOLD("Problem", "%1 has a \")\" without its \"(\"")},
    Sentence{Kind::NotClosed, TOLD("Problem", "%1 has a \"(\" without its \")\"")},
    Sentence{Kind::EmptyBrackets, TOLD("Problem", "%1 has brackets without a unit")},
    Sentence{Kind::TwoWays, TOLD("Problem", "%1 can be read in two ways")},
    Sentence{Kind::TooManyUnits, TOLD("Problem", "%1 has too many units")},
    Sentence{Kind::NoPower, TOLD("Problem", "%1 has a \"^\" without a power from 1 to 4")},
};

struct SentenceOfPart {
  Kind kind;
  Template<2> found;
};
constexpr std::array kAboutAPart{
    SentenceOfPart{Kind::NumberAfterSign, TOLD("Problem", "%1 has a number after %2")},
    SentenceOfPart{Kind::MisplacedSign, TOLD("Problem", "%1 has %2 where a unit should stand")},
    SentenceOfPart{Kind::NothingAfterSign, TOLD("Problem", "%1 has nothing after the last %2")},
    SentenceOfPart{Kind::UnknownUnit, TOLD("Problem", "%1 has the unit %2, which is not known")},
    SentenceOfPart{Kind::Capitals,
                   TOLD("Problem", "%1 has the unit %2, where capitals change the size")},
    SentenceOfPart{Kind::JoinedUnits,
                   TOLD("Problem", "%1 has the unit %2, which may be two units")},
    SentenceOfPart{Kind::SeveralTons,
                   TOLD("Problem", "%1 has %2, which may be 907, 1000 or 1016 kg")},
    SentenceOfPart{Kind::ManySizes, TOLD("Problem", "%1 has %2, which has many sizes")},
    SentenceOfPart{Kind::KelvinOrThousand,
                   TOLD("Problem", "%1 has %2, which may be kelvin or a thousand")},
    SentenceOfPart{Kind::WhoseDegrees,
                   TOLD("Problem", "%1 has %2, which does not say whose degrees")},
    SentenceOfPart{Kind::GramOrGrain, TOLD("Problem", "%1 has %2, which may be gram or grain")},
    SentenceOfPart{Kind::MetricHorsepower,
                   TOLD("Problem", "%1 has %2, which is metric horsepower")},
    SentenceOfPart{Kind::ApparentPower, TOLD("Problem", "%1 has %2, which is apparent power")},
    SentenceOfPart{Kind::GaugePressure,
                   TOLD("Problem", "%1 has %2, which is a pressure above that of the air")},
};

Told foundIn(const Quoted& text, const QuantityFault& fault) {
  for (const Sentence& one : kAboutTheText)
    if (one.kind == fault.kind) return Told(one.found, text);
  for (const SentenceOfPart& one : kAboutAPart)
    if (one.kind == fault.kind) return Told(one.found, text, inQuotes(fault.part));
  return {};
}

// "gal or L"
Told either(const std::vector<std::string>& ways, bool quoted) {
  Told all;
  for (const std::string& way : ways) {
    Told one = Told::just(quoted ? inQuotes(way) : Verbatim{way});
    all = all.empty() ? std::move(one)
                      : Told(TOLD("Problem", "%1 or %2"), std::move(all), std::move(one));
  }
  return all;
}

Told write(Told what) { return Told(TOLD("Problem", "write %1"), std::move(what)); }

// "write it with one of W, kW"
Told withAUnit(QuantityKind kind) {
  const std::string units(usualUnits(kind));
  if (kind == QuantityKind::ThermalInsulance)
    return Told(TOLD("Problem", "write it with one of %1"),
                Told(TOLD("Problem", "m2*K/W, ft2*h*degF/Btu, or as \"R 1.8\"")));
  if (units.find(',') == std::string::npos)
    return Told(TOLD("Problem", "write it with %1"), Verbatim{units});
  return Told(TOLD("Problem", "write it with one of %1"), Verbatim{units});
}

// A fault in the parts of its sentence: "found; advice, e.g. example; afterwards".
struct Parts {
  Told found;
  Told advice = {};
  std::string example = {};
  Told afterwards = {};
};

// What to do about it, where that depends on the fault alone.
Told adviceFor(const QuantityFault& fault) {
  switch (fault.kind) {
    case Kind::TwoDecimalSigns:
      return Told(TOLD("Problem", "write it without grouping the digits"));
    case Kind::TwoReadings:
      return Told(TOLD("Problem", "write one of these"));
    case Kind::GroupedDigits:
      return Told(TOLD("Problem", "write them without spaces"));
    case Kind::NoShare:
      return Told(TOLD("Problem", "write %1 for percent"), inQuotes(fault.part + " %"));
    case Kind::NoWireGauge:
      return Told(TOLD("Problem", "they run from \"4/0 AWG\" to \"40 AWG\""));
    case Kind::Colon:
      return Told(TOLD("Problem", "write times like \"1 h 30 min\""));
    case Kind::MoreAfterNumber:
      return fault.part == "RSI" ? Told(TOLD("Problem", "\"RSI\" already means m²·K/W"))
                                 : Told(TOLD("Problem", "\"R\" already means ft²·h·°F/Btu"));
    case Kind::BrokenNumberInside:
      return Told(TOLD("Problem", "write one number and one unit"));
    case Kind::SlashInBrackets:
      return Told(TOLD("Problem", "write one \"/\" and one pair of brackets"));
    case Kind::TwoWays:
      return Told(TOLD("Problem", "put all that stands below the \"/\" in brackets"));
    case Kind::Capitals:
    case Kind::WhoseDegrees:
      return write(either(fault.instead, true));
    case Kind::JoinedUnits:
      return Told(TOLD("Problem", "write %1 with a space, in brackets if it stands below a \"/\""),
                  inQuotes(fault.instead.front()));
    case Kind::SeveralTons:
    case Kind::ManySizes:
    case Kind::GramOrGrain:
    case Kind::MetricHorsepower:
    case Kind::ApparentPower:
      return write(either(fault.instead, false));
    case Kind::KelvinOrThousand:
      return Told(TOLD("Problem", "write \"K\" for kelvin, or the number in full"));
    case Kind::GaugePressure:
      return Told(TOLD("Problem", "write the whole pressure in psi"));
    default:
      return {};
  }
}

// Of a number alone there is nothing to say but what is accepted.
bool isAboutTheValue(Kind kind) {
  return kind == Kind::NoSuchFraction || kind == Kind::TooLargeOrSmall ||
         kind == Kind::BelowAbsoluteZero || kind == Kind::NotSmaller;
}

// "5 oz" where a volume is needed: what a person may have taken the unit for.
Told takenFor(const QuantityFault& fault, QuantityKind kind) {
  if (kind == QuantityKind::Time && fault.part == "m")
    return Told(TOLD("Problem", "minutes are \"min\""));
  if (kind == QuantityKind::Volume && fault.part == "oz")
    return Told(TOLD("Problem", "fluid ounces are \"fl oz\""));
  return {};
}

Parts otherQuantity(const Quoted& text, const QuantityFault& fault, QuantityKind kind) {
  Parts parts{.found = {}, .example = std::string(kindExample(kind))};
  if (fault.measured) {
    parts.found = Told(TOLD("Problem", "%1 is %2"), text, kindName(*fault.measured));
    parts.advice = Told(TOLD("Problem", "%1 is needed"), kindName(kind));
  } else {
    parts.found =
        Told(TOLD("Problem", "%1 has a unit that does not measure %2"), text, kindName(kind));
  }
  parts.afterwards = takenFor(fault, kind);
  return parts;
}

Parts partsOf(const QuantityFault& fault, std::string_view text, QuantityKind kind) {
  const Quoted quoted{std::string(text)};
  if (fault.kind == Kind::OtherQuantity) return otherQuantity(quoted, fault, kind);
  Parts parts{.found = foundIn(quoted, fault), .advice = adviceFor(fault)};
  switch (fault.kind) {
    case Kind::TwoReadings:
      parts.found = Told(TOLD("Problem", "%1 can be read as %2 or as %3"), quoted,
                         Verbatim{fault.instead.front()}, Verbatim{fault.instead.back()});
      return parts;
    case Kind::TwoDecimalSigns:
      parts.example = "1250.5";
      return parts;
    case Kind::TwoWays:
      if (!fault.instead.empty()) parts.example = fault.instead.front();
      return parts;
    default:
      break;
  }
  if (!parts.advice.empty() || isAboutTheValue(fault.kind)) return parts;
  parts.advice = withAUnit(kind);
  parts.example = kindExample(kind);
  if (fault.kind == Kind::NoUnit) {
    const std::string_view units = usualUnits(kind);
    parts.example = fault.part + ' ' + std::string(units.substr(0, units.find(',')));
  }
  return parts;
}

Told joined(Parts parts) {
  Told told = parts.advice.empty() ? std::move(parts.found)
                                   : advised(std::move(parts.found), std::move(parts.advice));
  if (!parts.example.empty()) told = withExample(std::move(told), inQuotes(parts.example));
  if (!parts.afterwards.empty()) told = advised(std::move(told), std::move(parts.afterwards));
  return told;
}

bool fits(std::string_view text, const AcceptedQuantity& accepted) {
  const auto si = detail::read(accepted.kind, text).si;
  return si && accepted.min <= *si && *si <= accepted.max;
}

// A number without its unit keeps its digits: "900" is better told of "900 m" than of "120 m".
std::string exampleFor(const QuantityFault& fault, const AcceptedQuantity& accepted) {
  const std::size_t unit = accepted.example.find(' ');
  if (fault.kind == Kind::NoUnit && unit != std::string::npos) {
    const std::string own = fault.part + accepted.example.substr(unit);
    if (fits(own, accepted)) return own;
  }
  return accepted.example;
}

// Whether a number is one that people say: none of "0.000694 d" and "43200000 mm".
bool readsWell(double number) {
  const double size = std::abs(number);
  return !std::isfinite(number) || size == 0.0 || (0.01 <= size && size < 1e5);
}

// In the unit of what was written where both ends read well in it; else in the reader's. Times
// always read well in theirs: "1 min to 12 h".
Told rangeOf(const AcceptedQuantity& accepted, std::string like) {
  const FormatOptions digits{.significantDigits = 4, .decimals = {}};
  const auto inUnit = [&](double si) { return detail::numberLike(accepted.kind, si, like); };
  if (accepted.kind == QuantityKind::Time || !readsWell(inUnit(accepted.min)) ||
      !readsWell(inUnit(accepted.max)))
    like.clear();
  return rangeTold(accepted.min, accepted.max, Amount{accepted.kind, accepted.min, digits, like},
                   Amount{accepted.kind, accepted.max, digits, like});
}

}  // namespace

Told kindName(QuantityKind kind) { return Told(kKindNames[static_cast<std::size_t>(kind)]); }

Told quantityProblem(const QuantityFault& fault, std::string_view text, QuantityKind kind) {
  return joined(partsOf(fault, text, kind));
}

Told quantityProblem(const QuantityFault& fault, std::string_view text,
                     const AcceptedQuantity& accepted) {
  Parts parts = partsOf(fault, text, accepted.kind);
  if (parts.advice.empty() && parts.example.empty()) {
    const std::string like = fault.part.empty() ? std::string() : "1 " + fault.part;
    parts.advice = Told(TOLD("Problem", "%1 is accepted"), rangeOf(accepted, like));
  }
  parts.example = exampleFor(fault, accepted);
  return joined(std::move(parts));
}

Told outOfRange(std::string_view text, const AcceptedQuantity& accepted) {
  const std::string written(text);
  return withExample(advised(Told(TOLD("Problem", "%1 is out of range"), Quoted{written}),
                             Told(TOLD("Problem", "accepted is %1"), rangeOf(accepted, written))),
                     inQuotes(accepted.example));
}

Told acceptedRange(const AcceptedQuantity& accepted, std::string_view like) {
  return rangeOf(accepted, std::string(like));
}

Told rangeTold(double min, double max, Argument low, Argument high) {
  if (std::isfinite(min) && std::isfinite(max))
    return Told(TOLD("Problem", "%1 to %2"), std::move(low), std::move(high));
  if (std::isfinite(min)) return Told(TOLD("Problem", "%1 or more"), std::move(low));
  return Told(TOLD("Problem", "%1 or less"), std::move(high));
}

}  // namespace rigs
