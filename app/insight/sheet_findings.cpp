#include "insight/sheet_findings.h"

#include "domain/item_kinds.h"
#include "insight/beside.h"

#include <algorithm>
#include <cmath>

namespace oddglass::insight {
namespace {

// Which lot was poured twice: the one of which somebody had two coded cups in a flight as drawn.
std::optional<Slot> doubledIn(const RevealedSession& session) {
  if (!session.plan.sheet || !session.plan.sheet->hasDuplicate) return std::nullopt;
  const auto twice = [&](const RevealedFlight& flight) -> std::optional<Slot> {
    for (std::size_t i = session.plan.marked ? 1 : 0; i < flight.drawn.size(); ++i)
      if (std::count(flight.drawn.begin() + static_cast<std::ptrdiff_t>(i) + 1, flight.drawn.end(), flight.drawn[i]) > 0) return flight.drawn[i];
    return std::nullopt;
  };
  for (const PanelFlight& flight : session.panel)
    if (const auto lot = twice(flight)) return lot;
  for (const MakerFlight& flight : session.makers)
    if (const auto lot = twice(flight)) return lot;
  return std::nullopt;
}

template <class Flight>
void measure(SheetFindings& findings, const RevealedSession& session, const Sheets<Flight>& all, const Sheets<Flight>& unheard) {
  const Plan& plan = session.plan;
  findings.people = static_cast<int>(all.places.size());
  findings.flights = all.flights;
  findings.missing = all.missing;
  findings.voided = all.voided;
  findings.unsure = all.unsure;
  findings.points = pointsOf(plan, all);
  if (unheard.flights < all.flights) weaken(findings.points, pointsOf(plan, unheard));
  findings.counts = countsOf(plan, all);
  std::ranges::stable_partition(findings.points, &PointsLine::isMain);
}

std::vector<MakerPoints> makersBeside(const RevealedSession& session, const std::vector<Slot>& lots) {
  const auto sheets = makerSheets(session);
  std::vector<MakerPoints> lines;
  for (const PointsLine& line : pointsOf(session.plan, sheets)) {
    for (const Score& score : byPerson(sheets.answers(line.item))) {
      auto found = std::ranges::find_if(lines, [&](const MakerPoints& each) { return each.place == score.place && each.item == line.item; });
      if (found == lines.end()) found = lines.insert(lines.end(), {score.place, line.item, std::vector<std::optional<double>>(lots.size())});
      const auto at = std::ranges::find(lots, score.lot);
      if (at != lots.end()) found->lots[static_cast<std::size_t>(at - lots.begin())] = score.value;
    }
  }
  return lines;
}

template <class Flight>
TableManner mannerOf(const SheetFindings& findings, const Plan& plan, const Sheets<Flight>& sheets) {
  TableManner table;
  const auto liking = std::ranges::find_if(findings.points, isOverallLiking);
  if (liking == findings.points.end()) return table;
  struct Mean {
    double sum = 0.0;
    int count = 0;
    void add(double value) { sum += value, ++count; }
    std::optional<double> value() const { return count > 0 ? std::optional(sum / count) : std::nullopt; }
  } all, reference, control, others;
  for (const Answer& answer : sheets.answers(liking->item)) {
    const bool isControl = plan.lots[static_cast<std::size_t>(answer.lot.value) - 1].role == LotRole::control;
    all.add(*answer.value);
    if (answer.lot == findings.target) reference.add(*answer.value);
    (isControl ? control : others).add(*answer.value);
  }
  table.likings = all.count;
  table.liking = all.value();
  table.reference = reference.value();
  table.moved = liking->moved;
  if (control.value() && others.value()) table.control = *control.value() - *others.value();
  return table;
}

// A word that differs leads on; else more people, or a reference; else the same table later.
NextTest nextOf(const SheetFindings& findings, const Plan& plan) {
  if (!findings.target) return {NextStep::addReference, {}, {}};
  const auto wasAsked = [&](const std::string& word) {
    return std::ranges::any_of(plan.items, [&](const SheetItem& item) { return item.kind == ItemKind::justRight && item.word == word; });
  };
  for (const PointsLine& line : findings.points)
    for (const LotGap& gap : line.gaps) {
      const bool isOwn = plan.lots[static_cast<std::size_t>(gap.lot.value) - 1].role == LotRole::compared;
      if (!isOwn || line.word.empty() || (gap.verdict != GapVerdict::less && gap.verdict != GapVerdict::more)) continue;
      return {wasAsked(line.word) ? NextStep::pairOnWord : NextStep::justRight, line.item, gap.lot};
    }
  const bool isOpen = std::ranges::any_of(findings.points, [](const PointsLine& line) {
    return std::ranges::any_of(line.gaps, [](const LotGap& gap) { return gap.verdict == GapVerdict::cannotTell; });
  });
  return {isOpen ? NextStep::morePeople : NextStep::again, {}, {}};
}

// Numbers are still shown after a broken seal; no verdict stands.
void takeVerdicts(SheetFindings& findings) {
  for (PointsLine& line : findings.points)
    for (LotGap& gap : line.gaps) {
      gap.verdict = GapVerdict::cannotTell;
      gap.lacks = false;
    }
}

std::vector<Caution> sheetCautionsOf(const SheetFindings& findings, const Plan& plan) {
  std::vector<Caution> cautions;
  const int planned = (findings.claim == Claim::me ? plan.makersPlanned : plan.panelPlanned) * plan.rounds;
  if (findings.flights - findings.missing - findings.voided < planned) cautions.push_back(Caution::fewerThanPlanned);
  if (findings.people < 20) cautions.push_back(Caution::countsOnly);
  return cautions;
}

}  // namespace

SheetFindings sheetFindingsOf(const RevealedSession& session) {
  const Plan& plan = session.plan;
  SheetFindings findings;
  findings.question = plan.question;
  findings.claim = plan.claim;
  findings.alphaPm = plan.alphaPm;
  findings.lots = codedLots(plan);
  findings.target = targetOf(plan);
  findings.doubled = doubledIn(session);
  const auto finish = [&](const auto& all, const auto& unheard) {
    measure(findings, session, all, unheard);
    findings.table = mannerOf(findings, plan, all);
  };
  if (plan.claim == Claim::me) {
    finish(makerSheets(session), makerSheets(session, true));
    findings.drivers.why = stats::Reason::fewTasters;
  } else {
    const auto sheets = panelSheets(session);
    finish(sheets, panelSheets(session, true));
    findings.drivers = driversOf(plan, sheets);
    findings.makers = makersBeside(session, findings.lots);
  }
  if (findings.people == 0) findings.why = NoVerdict::nobodyAnswered;
  if (sealBroken(session)) {
    findings.why = NoVerdict::sealBroken;
    takeVerdicts(findings);
  }
  findings.hasVerdicts = !findings.why && findings.target && findings.people >= fewestForARange;
  findings.next = nextOf(findings, plan);
  findings.deviations = deviationsOf(session);
  findings.cautions = sheetCautionsOf(findings, plan);
  return findings;
}

}  // namespace oddglass::insight
