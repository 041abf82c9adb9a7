#include "words/ready_sheets.h"

#include "words/mark.h"

namespace oddglass::words {
namespace {

// Puts a sheet together in the order in which it is read.
class Maker {
 public:
  explicit Maker(const Voice& voice) : voice_(voice) {}

  Maker& ask(ItemKind kind, const char* word = "", Part part = Part::main, bool required = true) {
    SheetItem item;
    item.kind = kind;
    item.part = part;
    item.required = required;
    if (*word != '\0') item.word = say(voice_, word);
    items_.push_back(item);
    return *this;
  }
  /// A line that the plan is about, with the gap that is too small to matter.
  Maker& line(const char* word) {
    ask(ItemKind::line, word);
    items_.back().isMain = true;
    items_.back().limit = 10;
    return *this;
  }
  Maker& liking() {
    ask(ItemKind::liking);
    items_.back().limit = 1;
    return *this;
  }
  Maker& colour() { return ask(ItemKind::liking, QT_TRANSLATE_NOOP("words", "colour"), Part::look, false); }
  Maker& bluntEnd() { return ask(ItemKind::worst).ask(ItemKind::changeOne, "", Part::main, false).ask(ItemKind::behaviour); }
  std::vector<SheetItem> items() { return std::move(items_); }

 private:
  const Voice& voice_;
  std::vector<SheetItem> items_;
};

}  // namespace

const std::vector<ReadySheet>& readySheets() {
  static const std::vector<ReadySheet> all{ReadySheet::guests, ReadySheet::beer, ReadySheet::mead, ReadySheet::cider, ReadySheet::wine, ReadySheet::marked};
  return all;
}

ReadySheet readyFor(Kind kind) {
  switch (kind) {
    case Kind::beer: return ReadySheet::beer;
    case Kind::mead: return ReadySheet::mead;
    case Kind::cider: return ReadySheet::cider;
    case Kind::wine: return ReadySheet::wine;
    case Kind::other: break;
  }
  return ReadySheet::guests;
}

std::string readyName(const Voice& voice, ReadySheet sheet) {
  switch (sheet) {
    case ReadySheet::guests: return say(voice, QT_TRANSLATE_NOOP("words", "A short one for guests"));
    case ReadySheet::beer: return say(voice, QT_TRANSLATE_NOOP("words", "Beer"));
    case ReadySheet::mead: return say(voice, QT_TRANSLATE_NOOP("words", "Mead"));
    case ReadySheet::cider: return say(voice, QT_TRANSLATE_NOOP("words", "Cider"));
    case ReadySheet::wine: return say(voice, QT_TRANSLATE_NOOP("words", "Wine"));
    case ReadySheet::marked: return say(voice, QT_TRANSLATE_NOOP("words", "How far from a marked cup"));
  }
  return {};
}

std::vector<SheetItem> readyItems(const Voice& voice, ReadySheet sheet) {
  Maker make(voice);
  switch (sheet) {
    case ReadySheet::guests:
      return make.line(QT_TRANSLATE_NOOP("words", "sweet")).line(QT_TRANSLATE_NOOP("words", "sour")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sweet"))
          .ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sour")).ask(ItemKind::worst).ask(ItemKind::behaviour).liking().items();
    case ReadySheet::beer:
      return make.colour().line(QT_TRANSLATE_NOOP("words", "malt")).line(QT_TRANSLATE_NOOP("words", "hops")).line(QT_TRANSLATE_NOOP("words", "bitter"))
          .line(QT_TRANSLATE_NOOP("words", "sweet")).line(QT_TRANSLATE_NOOP("words", "body")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "bitter"))
          .ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sweet")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "body"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "butter")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "green apple"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "cooked corn")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "wet cardboard"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "vinegar")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "smoke or barnyard")).bluntEnd().liking().items();
    case ReadySheet::mead:
      return make.colour().line(QT_TRANSLATE_NOOP("words", "honey")).line(QT_TRANSLATE_NOOP("words", "sweet")).line(QT_TRANSLATE_NOOP("words", "sour"))
          .line(QT_TRANSLATE_NOOP("words", "warmth of alcohol")).line(QT_TRANSLATE_NOOP("words", "body")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "honey"))
          .ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sweet")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sour"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "rotten egg")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "sherry"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "vinegar")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "nail varnish"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "bread or yeast")).bluntEnd().liking().items();
    case ReadySheet::cider:
      return make.colour().line(QT_TRANSLATE_NOOP("words", "apple")).line(QT_TRANSLATE_NOOP("words", "sour")).line(QT_TRANSLATE_NOOP("words", "sweet"))
          .line(QT_TRANSLATE_NOOP("words", "astringent")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sour")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sweet"))
          .ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "astringent")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "rotten egg"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "vinegar")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "nail varnish"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "barnyard")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "mousy"), Part::late).bluntEnd().liking().items();
    case ReadySheet::wine:
      return make.colour().line(QT_TRANSLATE_NOOP("words", "fruit")).line(QT_TRANSLATE_NOOP("words", "sour")).line(QT_TRANSLATE_NOOP("words", "sweet"))
          .line(QT_TRANSLATE_NOOP("words", "astringent")).line(QT_TRANSLATE_NOOP("words", "body")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sour"))
          .ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "sweet")).ask(ItemKind::justRight, QT_TRANSLATE_NOOP("words", "astringent"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "damp cellar")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "sherry"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "vinegar")).ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "rotten egg"))
          .ask(ItemKind::check, QT_TRANSLATE_NOOP("words", "mousy"), Part::late).bluntEnd().liking().items();
    case ReadySheet::marked: {
      auto items = make.ask(ItemKind::distance).ask(ItemKind::words, "", Part::main, false).ask(ItemKind::behaviour).liking().items();
      items.front().isMain = true;
      items.front().limit = 1;
      return items;
    }
  }
  return {};
}

}  // namespace oddglass::words
