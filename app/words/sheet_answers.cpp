#include "words/sheet_answers.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_asked.h"
#include "words/sheet_out.h"
#include "words/sheet_plan.h"

namespace oddglass::words {

std::string answeredTo(const Voice& voice, const SheetItem& item, int value) {
  const bool hasName = !item.word.empty() || item.kind == ItemKind::liking || item.kind == ItemKind::distance;
  const std::string what = hasName ? questionName(voice, item.kind, item.part, item.word) : kindName(voice, item.kind);
  if (item.kind == ItemKind::check) return value > 0 ? what : std::string();
  if (item.kind == ItemKind::worst) return say(voice, QT_TRANSLATE_NOOP("words", "{what}: none found"), {{"what", what}});
  const std::vector<std::string> names = item.kind == ItemKind::liking ? std::vector<std::string>() : answerWords(voice, item.kind);
  const auto at = static_cast<std::size_t>(value - item.low.value_or(1));
  if (at < names.size()) return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {answer}"), {{"what", what}, {"answer", names[at]}});
  return say(voice, QT_TRANSLATE_NOOP("words", "{what} {points}"), {{"what", what}, {"points", item.kind == ItemKind::magnitude ? points(voice, item.kind, value) : whole(voice, value)}});
}

}  // namespace oddglass::words
