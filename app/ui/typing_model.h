#pragma once
#include <QObject>
#include "tasting/typing.h"
#include "ui/form_model.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <array>
#include <optional>

namespace oddglass::ui {

/// One line of what was typed.
struct TypedRow {
  Q_GADGET
  Q_PROPERTY(QString label MEMBER label)
  Q_PROPERTY(QString says MEMBER says)

public:
  QString label, says;
};

/// Filled sheets typed in by keyboard: who types, which place, then line by line, twice. Nothing of it stays when the page is left.
class TypingModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QStringList typists MEMBER m_typists NOTIFY changed)
  Q_PROPERTY(int typist MEMBER m_typist NOTIFY changed)
  Q_PROPERTY(QString notThese MEMBER m_notThese NOTIFY changed)
  Q_PROPERTY(QStringList places MEMBER m_places NOTIFY changed)
  Q_PROPERTY(bool typing READ isTyping NOTIFY changed)
  Q_PROPERTY(bool done READ isDone NOTIFY changed)
  Q_PROPERTY(QString over MEMBER m_over NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString line MEMBER m_line NOTIFY changed)
  Q_PROPERTY(QString note MEMBER m_note NOTIFY changed)
  Q_PROPERTY(QString told MEMBER m_told NOTIFY changed)
  Q_PROPERTY(bool asksACode READ asksACode NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* typed READ typed CONSTANT)
  Q_PROPERTY(oddglass::ui::FormModel* form READ form CONSTANT)

public:
  TypingModel(const Stage& stage, QObject* parent);
  bool isTyping() const { return m_typing.has_value(); }
  /// A code comes next, and this is no score sheet.
  bool asksACode() const;
  bool isDone() const { return m_typing && m_typing->isDone(); }
  Rows* typed() { return &m_typed; }
  FormModel* form() { return &m_form; }
  Q_INVOKABLE void load();
  Q_INVOKABLE void pickTypist(int typist);
  /// One of `places`: its next flight is typed in.
  Q_INVOKABLE void pickPlace(int place);
  /// Takes what stands in `line`.
  Q_INVOKABLE void enter();
  /// The line before this one again.
  Q_INVOKABLE void back();
  /// A code that cannot be read or is none of that place: nothing is guessed. The round is set aside, with what stands in the line as it was written.
  Q_INVOKABLE void cannotRead();
  /// Both times agree: hands it in.
  Q_INVOKABLE void lock();
  Q_INVOKABLE void leave() { go(Router::Page::Places); }

protected:
  void fail(const Problem& problem) override;

private:
  void show();
  void forget();
  QStringList m_typists, m_places;
  int m_typist = -1;
  QString m_notThese, m_over, m_headline, m_lead, m_line, m_note, m_told;
  std::vector<std::optional<TasterId>> m_typistIds;
  std::optional<std::optional<TasterId>> m_before;   ///< who typed the sheet before this one
  std::vector<Place> m_placeNumbers;
  std::optional<tasting::Typing> m_typing;
  std::array<std::uint8_t, 16> m_clientId{};
  Rows m_typed;
  FormModel m_form;
};

}  // namespace oddglass::ui
