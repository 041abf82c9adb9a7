#pragma once
#include <QObject>
#include "tasting/flight.h"
#include "tasting/hand_in.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <array>
#include <optional>

namespace oddglass::ui {

/// One cup before the taster.
struct CupRow {
  Q_GADGET
  Q_PROPERTY(QString code MEMBER code)
  Q_PROPERTY(QString spoken MEMBER spoken)
  Q_PROPERTY(QString position MEMBER position)
  Q_PROPERTY(bool chosen MEMBER chosen)

public:
  QString code, spoken, position;
  bool chosen = false;
};

/// My cups and Locked: one flight of one place, from "are these your cups?" to the receipt.
class CupsModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString placeLine MEMBER m_placeLine NOTIFY changed)
  Q_PROPERTY(QString sealMark READ sealMark NOTIFY changed)
  Q_PROPERTY(bool confirmed MEMBER m_confirmed NOTIFY changed)
  Q_PROPERTY(QString confirmSentence MEMBER m_confirmSentence NOTIFY changed)
  Q_PROPERTY(bool asksSureness MEMBER m_asksSureness NOTIFY changed)
  Q_PROPERTY(bool asksClue MEMBER m_asksClue NOTIFY changed)
  Q_PROPERTY(bool asksWords MEMBER m_asksWords NOTIFY changed)
  Q_PROPERTY(int sureness MEMBER m_sureness NOTIFY changed)
  Q_PROPERTY(int clue MEMBER m_clue NOTIFY changed)
  Q_PROPERTY(QString comment MEMBER m_comment NOTIFY changed)
  Q_PROPERTY(QString lockWords READ lockWords NOTIFY changed)
  Q_PROPERTY(QString lockReason READ lockReason NOTIFY changed)
  Q_PROPERTY(QString lockedHeadline MEMBER m_lockedHeadline NOTIFY changed)
  Q_PROPERTY(QString lockedLead MEMBER m_lockedLead NOTIFY changed)
  Q_PROPERTY(bool more MEMBER m_more NOTIFY changed)
  Q_PROPERTY(QString notMine MEMBER m_notMine NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* cups READ cups CONSTANT)

public:
  CupsModel(const Stage& stage, QObject* parent);
  Rows* cups() { return &m_cups; }
  const QString& sealMark() const { return m_stage.current.sealMark(); }
  QString lockWords() const;
  QString lockReason() const;

  /// The next flight of a place, from its beginning.
  void open(int place);
  Q_INVOKABLE void confirm();
  /// Chooses the odd one; `row` counts from the left.
  Q_INVOKABLE void choose(int row);
  Q_INVOKABLE void lock();
  /// Whoever sits here stops; what is not locked is counted as missing.
  Q_INVOKABLE void stop();
  Q_INVOKABLE void sayNotMine();
  Q_INVOKABLE void nextRound() { open(m_place.value); }
  Q_INVOKABLE void passOn() { go(Router::Page::Places); }

private:
  struct Read {
    std::optional<tasting::Flight> flight;
    std::array<std::uint8_t, 16> clientId{};
    bool loose = false;
  };
  static Read read(Cellar& cellar, const SessionId& id, Place place);
  void show();
  void forget();
  Place m_place;
  Rows m_cups;
  std::optional<tasting::Flight> m_flight;
  std::array<std::uint8_t, 16> m_clientId{};
  int m_chosen = -1, m_sureness = -1, m_clue = -1;
  bool m_confirmed = false, m_asksSureness = false, m_asksClue = false, m_asksWords = false, m_more = false, m_loose = false;
  QString m_placeLine, m_confirmSentence, m_comment, m_lockedHeadline, m_lockedLead, m_notMine;
};

}  // namespace oddglass::ui
