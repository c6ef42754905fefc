// SPDX-License-Identifier: GPL-3.0-or-later
// Electrical rules by region, as data: rigs/data/rules/*.json, one document a region. Nothing here
// knows a region's numbers.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "physics/element_group.hpp"
#include "physics/units.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/words/told.hpp"

namespace rigs {

// Whether a figure was read in print, follows by arithmetic, or still wants checking.
enum class Status { Seen, Computed, Memory };
struct Cite {
  std::string clause;
  std::string source;
  Status status = Status::Memory;
  std::string note;  // may be empty
};

// Nominal voltages that differ by less are the same.
inline constexpr double kSameVoltage = 0.02;
struct VoltageRange {
  physics::Voltage nominal, lowest, highest;
  std::string name;  // "service, Range A"
  Cite cite;
};
// A load that lasts counts as continuous and gets a share of the circuit only.
struct LongUse {
  std::string name, text;
  double share = 1.0;
  physics::Time lasts;
  std::optional<physics::Time> within;  // any stretch of this length; empty: without a break
  bool conductors = false;              // a conductor's tabled ampacity must have the same to spare
  Cite cite;
};
// One plug-in load where several outlets share a circuit.
struct SharedUse {
  std::string name;
  double share = 1.0;
  physics::Current upTo;  // circuits it is about
  Cite cite;
};
// Of an outlet's earth contact. Where no source tells, nothing safe is taken for granted.
enum class Earth { NotKnown, Missing, There };
struct Outlet {
  std::string name;  // "14-30"
  physics::Voltage voltage;
  physics::Current current;
  bool neutral = true, household = false;
  Earth earth = Earth::NotKnown;
  std::optional<physics::Current> bothSockets;  // of a pair together
  std::string fuse = {};                        // a name of the rules' fuses, in its plug
  Cite cite;
};
// A kind of fuse link: so many times its rating it carries at least that long, and so many times
// blow it within that time.
struct Fuse {
  std::string name;       // "BS 1362"
  physics::Current upTo;  // its largest link
  double carries = 1.0, blows = 1.0;
  physics::Time carriesFor, blowsWithin;
  Cite cite;
};
struct OutletLoad {
  physics::Current circuit, outlet, most;
  Cite cite;
};
struct OutletsOnCircuit {
  physics::Current circuit;
  std::vector<physics::Current> outlets;
  Cite cite;
};
struct HouseholdSockets {
  physics::Current moreThan;
  physics::Time longerThan;
  std::string text;
  Cite cite;
};
struct Protection {
  std::string name, text;
  physics::Current holds, trips;  // residual current: certainly not below, certainly at
  Cite cite;
};
struct Leakage {
  physics::Current perKilowatt, atLeast, atMost;
  Cite cite;
};
struct LargestProtection {
  double times = 1.5;  // of the rated current, then the next standard size
  physics::Current upTo, thenUpTo;
  Cite cite;
};
// A breaker may be the next standard size above what its conductor carries, on a circuit that does
// not feed several outlets.
struct NextSize {
  std::string text;
  Cite cite;
};
// Whatever its own insulation stands, a conductor is used at most by the column its terminations
// are made for, uncorrected.
struct Terminations {
  physics::Temperature usual, marked;
  Cite cite;
};
// For many loaded conductors in one cable or cord.
struct Adjustment {
  int from = 4, upTo = 6;
  double factor = 1.0;
  Cite cite;
};
struct Subdivide {
  physics::Current above;
  std::string text;
  Cite cite;
};

enum class CableUse { BuildingWire, Cord, ExtensionSet };
struct ConductorRow {
  physics::Area area;
  std::string size;  // as written: "14 AWG"
  physics::Current ampacity;
  std::optional<physics::Current> breaker;  // the most that may protect it, whatever its ampacity
  std::optional<physics::Length> upTo;      // longest run this row is for
  std::string upToText;                     // as written: "50 ft"
  std::optional<physics::ResistancePerLength> resistance;  // one way, at work
  std::optional<physics::ResistancePerLength> loopAtWork;  // there and back, from tables
};
struct AmbientRow {
  physics::Temperature upTo;
  double factor = 1.0;
};
struct ConductorTable {
  CableUse use = CableUse::BuildingWire;
  std::optional<physics::Temperature> insulation;
  physics::Temperature ambient;
  int loaded = 2;      // current-carrying conductors
  std::string method;  // of installation, where tables differ by it
  std::vector<ConductorRow> rows;
  std::vector<AmbientRow> ambientFactors;  // empty: by the root law
  Cite cite;
};
struct Drum {
  std::vector<double> layers;
  Cite cite;
};
struct DropLimit {
  double share = 0.05;
  std::string part;  // "branch circuit", "whole way"
  bool binding = false;
  Cite cite;
};
// At once, between these times the rating: types B, C and D.
struct Instant {
  std::string type;
  double from = 0.0, to = 0.0;
};
struct Breakers {
  std::vector<physics::Current> sizes;  // ascending
  std::optional<double> holds, trips;   // times the rating: not within an hour; within an hour
  std::vector<Instant> instant;
  Cite cite;
};
struct Tolerance {
  physics::RatingTolerance rating;
  Cite cite;
};

struct CircuitRules {
  std::string region, code, edition, about;
  std::vector<std::string> circuitsOf;  // regions of catalogue circuits
  std::vector<VoltageRange> voltages;
  std::optional<Tolerance> tolerance;
  Breakers breakers;
  std::vector<Fuse> fuses;
  std::vector<LongUse> longUse;
  std::vector<SharedUse> shared;
  std::vector<Outlet> outlets;
  std::vector<OutletLoad> outletLoads;
  std::vector<OutletsOnCircuit> outletsOnCircuit;
  std::optional<HouseholdSockets> householdSockets;
  std::optional<LargestProtection> largestProtection;
  std::optional<Subdivide> subdivide;
  std::optional<NextSize> nextSize;
  std::optional<Terminations> terminations;
  std::vector<Adjustment> adjustments;
  std::optional<Protection> groundFault;
  std::optional<Leakage> leakage;
  std::vector<ConductorTable> conductors;
  std::optional<Drum> drum;
  std::vector<DropLimit> voltageDrop;

  const Outlet* outlet(std::string_view name) const;
  const Fuse* fuse(std::string_view name) const;
  // The ranges published for this nominal voltage, within kSameVoltage.
  std::vector<const VoltageRange*> rangesOf(physics::Voltage nominal) const;
  // The nominal voltage that this may be measured of: one within whose published range it lies, the
  // nearest of them. Empty where there is none.
  std::optional<physics::Voltage> nominalOf(physics::Voltage measured) const;
  std::optional<physics::Current> nextBreaker(physics::Current atLeast) const;
};

// Reads one rules document; every problem is reported.
std::optional<CircuitRules> readRules(std::string_view document, Problems& problems);

// The bundled ones, by region name. Read once, on first use.
const std::vector<CircuitRules>& bundledRules();
// Whichever letters are capital.
bool sameRegion(std::string_view one, std::string_view other);
const CircuitRules* rulesOf(std::string_view region);  // or nullptr
// All that may apply to a catalogue circuit's region: "North America" has two.
std::vector<const CircuitRules*> rulesForCircuitsOf(std::string_view circuitRegion);

// What a cable of this size may carry.
struct Ampacity {
  const ConductorTable* table = nullptr;
  const ConductorRow* row = nullptr;
  double ambientFactor = 1.0, drumFactor = 1.0, manyFactor = 1.0;
  physics::Current allowed;
  Told lacks = {};  // a factor that no table has; then `allowed` is without it

  double factor() const { return ambientFactor * drumFactor * manyFactor; }
};
struct CableAsked {
  CableUse use = CableUse::BuildingWire;
  physics::Area area;
  physics::Length length = {};
  std::optional<physics::Temperature> insulation = {};  // empty: the most cautious table
  std::optional<physics::Temperature> ambient = {};     // empty: the table's own
  int loaded = 2;                                       // above 3 with an adjustment
  int layersOnDrum = 0;
  std::string method = {};

  bool operator==(const CableAsked&) const = default;
};
// Nullopt where no table of these rules has this size; `nearest` then names the closest one that
// is there, and nothing if none is.
std::optional<Ampacity> ampacity(const CircuitRules& rules, const CableAsked& cable, Told& nearest);
// Nullopt where the table neither has factors nor says what its insulation stands, and the place is
// warmer than the table's.
std::optional<double> ambientFactorOf(const ConductorTable& table, physics::Temperature ambient,
                                      std::optional<physics::Temperature> insulation = {});

// "read", "computed", "from memory, check": for people.
Told statusWords(Status status);
// A text of a rules document (a region, a rule's name, a part of a cable's way), told to people.
inline Bundled fromRules(std::string text) { return {"Phrases", std::move(text)}; }

}  // namespace rigs
