#pragma once

#include "insight/side_by_side.h"

#include <algorithm>
#include <string>
#include <vector>

namespace oddglass::testing {

inline LotQuestion lineOf(const std::string& word) { return {ItemKind::line, Part::main, word, 0, 100}; }

/// Batches of one recipe, a lot each and a bought lot at the end, and what people said of them, written by hand.
struct BatchBench {
  std::vector<Batch> batches;
  BatchTastings tastings;
  std::vector<WordNow> words;

  explicit BatchBench(int count, std::vector<LotQuestion> questions = {lineOf("honey")}) {
    for (int i = 0; i < count; ++i) {
      Batch batch;
      batch.beverage.name = "Hedge mead " + std::to_string(i + 1);
      Lot lot;
      lot.id.text = "lot " + std::to_string(i + 1);
      lot.packagedOn = "2024-0" + std::to_string(i + 1) + "-01";
      batch.lots = {lot};
      batches.push_back(batch);
      tastings.lots.push_back(lot.id);
      tastings.names.push_back(batch.beverage.name);
      tastings.batchOf.push_back(i);
    }
    tastings.lots.push_back({"bought"});
    tastings.names.push_back("Bought mead");
    tastings.batchOf.push_back(-1);
    tastings.about.questions = std::move(questions);
    for (const LotQuestion& each : tastings.about.questions) words.push_back({each.word, each.word, {}});
  }

  int bought() const { return static_cast<int>(batches.size()); }

  /// A session on a day that asked everything, with this limit.
  int session(const std::string& day, std::optional<int> limit = std::nullopt) {
    LotSession session{{"session " + day}, "t", day, {}, {}};
    for (const LotQuestion& each : tastings.about.questions) {
      SheetItem item;
      item.kind = each.kind;
      item.part = each.part;
      item.word = each.word;
      item.limit = limit;
      session.plan.items.push_back(item);
    }
    tastings.about.sessions.push_back(session);
    return static_cast<int>(tastings.about.sessions.size()) - 1;
  }

  void say(int session, int lot, const std::vector<int>& values, int question = 0) {
    for (std::size_t i = 0; i < values.size(); ++i) tastings.about.answers.push_back({session, static_cast<int>(i), lot, question, values[i]});
    tastings.about.people = std::max(tastings.about.people, static_cast<int>(values.size()));
  }

  insight::SideBySide found(std::optional<int> good = std::nullopt) const { return insight::sideBySideOf(batches, tastings, words, good); }
};

// Ten people under two conditions: Student 1908, Biometrika 6:1, as R carries it (data set "sleep"), ten times as large and moved up by 30 to stand on a line of 100.
inline const std::vector<int> firstTen{37, 14, 28, 18, 29, 64, 67, 38, 30, 50}, secondTen{49, 38, 41, 31, 29, 74, 85, 46, 76, 64};

}  // namespace oddglass::testing
