#include "ui/kinds.h"

#include "domain/problem.h"
#include "ui/page_model.h"
#include "ui/voice.h"
#include "words/drinks.h"
#include "words/numbers.h"
#include "words/units.h"

#include <QCoreApplication>
#include <QStringList>
#include <array>
#include <cmath>

namespace oddglass::ui {
namespace {

QString say(const char* text) { return QCoreApplication::translate("Shelf", text); }

}  // namespace

QString kindWord(Kind kind) {
  switch (kind) {
    case Kind::beer: return say(QT_TRANSLATE_NOOP("Shelf", "beer"));
    case Kind::mead: return say(QT_TRANSLATE_NOOP("Shelf", "mead"));
    case Kind::cider: return say(QT_TRANSLATE_NOOP("Shelf", "cider"));
    case Kind::wine: return say(QT_TRANSLATE_NOOP("Shelf", "wine"));
    case Kind::other: return say(QT_TRANSLATE_NOOP("Shelf", "another drink"));
  }
  return {};
}

QString allergenWord(Allergen allergen) {
  static constexpr std::array words{
      QT_TRANSLATE_NOOP("Shelf", "gluten"),  QT_TRANSLATE_NOOP("Shelf", "egg"),     QT_TRANSLATE_NOOP("Shelf", "fish"),
      QT_TRANSLATE_NOOP("Shelf", "milk"),    QT_TRANSLATE_NOOP("Shelf", "nuts"),    QT_TRANSLATE_NOOP("Shelf", "peanuts"),
      QT_TRANSLATE_NOOP("Shelf", "soy"),     QT_TRANSLATE_NOOP("Shelf", "sesame"),  QT_TRANSLATE_NOOP("Shelf", "mustard"),
      QT_TRANSLATE_NOOP("Shelf", "celery"),  QT_TRANSLATE_NOOP("Shelf", "lupin"),   QT_TRANSLATE_NOOP("Shelf", "molluscs"),
      QT_TRANSLATE_NOOP("Shelf", "crustaceans"), QT_TRANSLATE_NOOP("Shelf", "sulphites")};
  return say(words.at(static_cast<std::size_t>(allergen)));
}

QString noteWord(NoteKind kind) { return shown(words::noteKindName(voice(), kind)); }

QString drinkLine(const Beverage& drink) {
  QStringList parts{kindWord(drink.kind)};
  if (drink.abvBp) parts << QString::fromStdString(words::strength(voice(), *drink.abvBp));
  parts << (drink.origin == Origin::batch ? say(QT_TRANSLATE_NOOP("Shelf", "made here")) : say(QT_TRANSLATE_NOOP("Shelf", "a reference")));
  return parts.join(QStringLiteral(", "));
}

QString gravityText(std::optional<int> tenThousandths) {
  return tenThousandths ? QString::fromStdString(words::gravityTyped(voice(), *tenThousandths)) : QString();
}

QString strengthText(std::optional<int> hundredths) {
  return hundredths ? QString::fromStdString(words::decimal(voice(), *hundredths / 100.0, *hundredths % 100 ? (*hundredths % 10 ? 2 : 1) : 0)) : QString();
}

std::optional<int> typedScaled(const QString& text, int scale, const char* argument) {
  const std::string typed = text.trimmed().toStdString();
  if (typed.empty()) return std::nullopt;
  const auto number = words::readNumber(typed);
  if (!number || std::abs(*number) > 100000) throw Problem(Trouble::notANumber, argument, {{"text", typed}});
  return static_cast<int>(std::lround(*number * scale));
}

int typedVolume(const QString& text, const char* argument) {
  const std::string typed = text.trimmed().toStdString();
  if (typed.empty()) throw Problem(Trouble::empty, argument);
  const auto ml = words::readVolume(voice(), typed);
  if (!ml) throw Problem(Trouble::notANumber, argument, {{"text", typed}});
  return *ml;
}

std::optional<int> typedGravity(const QString& text, const char* argument) {
  const std::string typed = text.trimmed().toStdString();
  if (typed.empty()) return std::nullopt;
  const auto gravity = words::readGravity(voice(), typed);
  if (!gravity) throw Problem(Trouble::notANumber, argument, {{"text", typed}});
  return gravity;
}

int typedWhole(const QString& text, const char* argument) {
  const std::string typed = text.trimmed().toStdString();
  if (typed.empty()) throw Problem(Trouble::empty, argument);
  const auto number = words::readWhole(typed);
  if (!number || std::abs(*number) > 1000000) throw Problem(Trouble::notANumber, argument, {{"text", typed}});
  return static_cast<int>(*number);
}

int typedBetween(const QString& text, int low, int high, const char* argument) {
  const auto number = words::readWhole(plain(text.trimmed()));
  if (!number) throw Problem(Trouble::notANumber, argument, {{"text", plain(text)}});
  if (*number < low || *number > high) throw Problem(Trouble::outOfRange, argument, {{"text", plain(text)}, {"low", std::to_string(low)}, {"high", std::to_string(high)}});
  return static_cast<int>(*number);
}

}  // namespace oddglass::ui
