#include "ui/card_model.h"

#include "insight/card.h"
#include "session/card.h"
#include "shelf/people.h"
#include "shelf/vocabulary.h"
#include "ui/voice.h"
#include "words/card.h"

namespace oddglass::ui {

void CardModel::open(const TasterId& who) {
  struct Read {
    std::string name;
    words::CardPage page;
  };
  ask([who](Cellar& cellar) {
    store::Store& store = cellar.store();
    const insight::Card card = insight::cardOf(session::cardTastings(store, who), shelf::meaningNow(store));
    Read read{shelf::taster(store, who).name, {}};
    read.page = words::cardPage(voice(), read.name, card);
    return read;
  }, [this, who](const Read& read) {
    m_who = who;
    m_opened = false;
    m_handOver = shown(read.page.headline);
    m_title = tr("Your card, %1").arg(shown(read.name));
    m_iAm = tr("I am %1").arg(shown(read.name));
    m_lead = shown(read.page.lead);
    m_scores = shownAll(read.page.scores);
    m_noticed = shownAll(read.page.noticed);
    m_limits = shown(read.page.limits);
    m_asked = shown(words::cardLeave(voice()));
    emit changed();
    go(Router::Page::Card);
  });
}

void CardModel::read() {
  m_opened = true;
  emit changed();
}

void CardModel::letBeSeen() {
  ask([who = m_who](Cellar& cellar) { session::letCardBeSeen(cellar.store(), cellar.clock, who); }, [this] { leave(); });
}

void CardModel::takeBack() {
  ask([who = m_who](Cellar& cellar) { session::takeCardBack(cellar.store(), who); }, [this] { leave(); });
}

// Nothing of it stays behind for whoever has the device next.
void CardModel::leave() {
  m_opened = false;
  m_handOver = m_title = m_lead = m_iAm = m_limits = m_asked = QString();
  m_scores = m_noticed = QStringList();
  emit changed();
  go(Router::Page::People);
}

}  // namespace oddglass::ui
