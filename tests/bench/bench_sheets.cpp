// What comes out of a score sheet, from the revealed session to words and figure, beside one frame of a window. Nothing passes or fails here.
#include "bench/timed.h"
#include "figures/gaps.h"
#include "insight/sheet_table.h"
#include "report/sheet_pictures.h"
#include "words/sheet_out.h"

#include <cstdio>
#include <random>
#include <string>

using namespace oddglass;
using testing::medianMs;
using testing::SheetTable;

namespace {

/// A panel with a taste of its own: every person a level, every lot a gap, and a scatter of ten points.
RevealedSession evening(int people, int lots, int words) {
  std::mt19937 chance(20261129);
  std::normal_distribution<double> level(0, 12), gap(0, 8), scatter(0, 10);
  std::vector<LotRole> roles(static_cast<std::size_t>(lots), LotRole::compared);
  roles.back() = LotRole::reference;
  SheetTable table(lots, roles);
  std::vector<Item> items{table.ask(ItemKind::liking, {}, 1, true)};
  for (int word = 1; word < words; ++word) items.push_back(table.ask(ItemKind::line, "word " + std::to_string(word), 10));
  for (std::size_t i = 0; i < items.size(); ++i) {
    std::vector<double> ofLot;
    for (int lot = 0; lot < lots; ++lot) ofLot.push_back(gap(chance));
    for (int place = 1; place <= people; ++place) {
      const double own = level(chance);
      for (int lot = 1; lot <= lots; ++lot) {
        const double at = 50 + own + ofLot[static_cast<std::size_t>(lot - 1)] + scatter(chance);
        table.say(place, items[i], lot, i == 0 ? std::clamp(static_cast<int>(at / 11), 1, 9) : std::clamp(static_cast<int>(at), 0, 100));
      }
    }
  }
  table.session.commitmentHolds = true;
  return table.session;
}

}  // namespace

int main() {
  const double frame = 1000.0 / 60;
  const words::Voice voice;
  for (const auto& [people, lots, words, frames] : {std::tuple{12, 8, 20, 1}, {60, 12, 40, 12}}) {
    const RevealedSession session = evening(people, lots, words);
    std::size_t read = 0;
    const double findings = medianMs(11, [&] { read += insight::sheetFindingsOf(session).points.size(); });
    const auto found = insight::sheetFindingsOf(session);
    const double said = medianMs(11, [&] { read += words::sheetOut(voice, session, found).sections.size(); });
    const double figures = medianMs(11, [&] {
      for (Slot lot : found.lots)
        if (const auto picture = report::gapPicture(voice, session, found, lot)) read += figures::gapFigure(*picture, 860).marks.size();
    });
    const double all = findings + said + figures;
    std::printf("%d x %d x %d: findings %.2f ms, words %.2f ms, figures %.2f ms; all %.2f ms, %.2f of the %d frames allowed (%zu)\n", people, lots, words, findings, said, figures, all,
                all / (frame * frames), frames, read);
  }
}
