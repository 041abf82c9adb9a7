#include "insight/batch_said.h"

#include "insight/batch_links.h"

#include <algorithm>

namespace oddglass::insight {

const WordNow* wordOf(const std::vector<WordNow>& words, const std::string& asked) {
  const auto found = std::ranges::find(words, asked, &WordNow::asked);
  return found == words.end() ? nullptr : &*found;
}

std::string nowCalled(const std::vector<WordNow>& words, const std::string& asked) {
  const WordNow* word = wordOf(words, asked);
  return word ? word->now : asked;
}

MergedQuestions mergedQuestions(const AboutLots& about, const std::vector<WordNow>& words, const std::function<bool(ItemKind)>& wanted) {
  const auto now = [&](LotQuestion question) {
    question.word = nowCalled(words, question.word);
    return question;
  };
  std::set<LotQuestion> all;
  for (const LotQuestion& each : about.questions)
    if (wanted(each.kind)) all.insert(now(each));
  MergedQuestions merged{{all.begin(), all.end()}, {}, std::vector<std::set<std::string>>(all.size())};
  for (const LotQuestion& each : about.questions) {
    const auto found = std::ranges::find(merged.all, now(each));
    merged.of.push_back(found == merged.all.end() ? -1 : static_cast<int>(found - merged.all.begin()));
    if (merged.of.back() >= 0) merged.askedAs[static_cast<std::size_t>(merged.of.back())].insert(each.word);
  }
  return merged;
}

std::vector<SaidOf> saidOf(const BatchTastings& tastings, const MergedQuestions& merged) {
  std::vector<std::map<std::tuple<int, int, int>, std::pair<double, int>>> sums(merged.all.size());
  for (const LotAnswer& each : tastings.about.answers) {
    const int question = merged.of[static_cast<std::size_t>(each.question)];
    if (question < 0 || isFlawed(tastings.about.sessions[static_cast<std::size_t>(each.session)], tastings.lots[static_cast<std::size_t>(each.lot)])) continue;
    auto& [sum, count] = sums[static_cast<std::size_t>(question)][{each.session, each.person, each.lot}];
    sum += each.value;
    ++count;
  }
  std::vector<SaidOf> said(sums.size());
  for (std::size_t q = 0; q < sums.size(); ++q)
    for (const auto& [key, sum] : sums[q]) said[q][key] = sum.first / sum.second;
  return said;
}

}  // namespace oddglass::insight
