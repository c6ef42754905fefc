// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/day_phase.hpp"

#include "physics/passage.hpp"
#include "physics/phase.hpp"
#include "physics/phase_laws.hpp"

namespace physics {

void bookStored(Ledger& ledger, const StoredHeat& before, const StoredHeat& after) {
  ledger.wort = after.wort - before.wort;
  ledger.grain = after.grain - before.grain;
  ledger.vessel = after.vessel - before.vessel;
}

PhaseEnd runPhase(const DayConditions& day, const PhaseOrder& order, Moment& now, Stage& stage) {
  DayPhase phase(day, order, now, stage);
  PhaseState start{};
  start[kTemperature] = inKelvin(now.wort);
  start[kWater] = inKilograms(now.contents.water);
  const bool stepped = day.options.method == Method::StepsInTime;
  const auto [ended, lasted, last] =
      stepped ? integratePhase(start, phase.span(), phase) : passPhase(start, phase);

  const StoredHeat before = now.contents.storedHeat(now.wort);
  stage.evaporated += now.contents.water - waterOf(last);
  now.contents.water = waterOf(last);
  now.wort = temperatureOf(last);
  now.clock += lasted;

  Ledger account{};
  account.element = megajoules(last[kElement]);
  account.cable = account.element * (day.full.inCable / day.full.delivered);
  account.pump = order.losses.pumpHeat() * lasted;
  bookStored(account, before, now.contents.storedHeat(now.wort));
  account.steam = megajoules(last[kSteam]);
  for (std::size_t i = 0; i < kPathCount; ++i) {
    account.lost.values[i] = megajoules(last[kFirstPath + i]);
  }
  stage.ledger += account;
  return ended;
}

}  // namespace physics
