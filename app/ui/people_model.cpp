#include "ui/people_model.h"

#include "session/erase.h"
#include "shelf/people.h"
#include "ui/people_read.h"
#include "ui/voice.h"
#include "words/noticing.h"
#include "words/seal.h"

#include <algorithm>

namespace oddglass::ui {

PeopleModel::PeopleModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_people(PersonRow::staticMetaObject, this) {
  nameFields({"name", "nickname", "is_brewer"});
}

QString PeopleModel::noticingRule() { return shown(words::noticingRule(voice())); }

void PeopleModel::setArchivedShown(bool shown) {
  m_archivedShown = shown;
  load();
}

void PeopleModel::load() {
  ask([archived = m_archivedShown](Cellar& cellar) { return look(cellar, archived); }, [this](Read read) { show(std::move(read)); });
}

void PeopleModel::show(Read read) {
  m_values = std::move(read.people);
  m_cards = std::move(read.cards);
  m_noticed = shownAll(read.noticed);
  m_brewersBetter = shownAll(read.better);
  std::vector<PersonRow> rows;
  for (const Taster& person : m_values) {
    QStringList parts;
    if (person.isBrewer) parts << tr("the brewer");
    if (!person.nickname.empty()) parts << tr("shown as \u201c%1\u201d where they ask for a nickname").arg(shown(person.nickname));
    if (std::ranges::find(m_cards, person.id, &CardWish::who) != m_cards.end()) parts << tr("has a card");
    PersonRow row;
    row.name = shown(person.name);
    row.line = parts.join(tr(", "));
    row.archived = person.archived;
    rows.push_back(row);
  }
  m_people.set(rows);
  m_loaded = true;
  if (m_open) showPerson();
  emit changed();
}

void PeopleModel::openNew() {
  m_id = {};
  m_name = m_nickname = m_erasedLine = QString();
  m_isBrewer = m_known = m_archived = false;
  m_open = true;
  showPerson();
  settle();
  emit changed();
}

void PeopleModel::openPerson(int row) {
  const Taster& person = m_values.at(static_cast<std::size_t>(row));
  m_id = person.id;
  m_name = shown(person.name);
  m_nickname = shown(person.nickname);
  m_isBrewer = person.isBrewer;
  m_archived = person.archived;
  m_known = m_open = true;
  m_erasedLine.clear();
  const words::AskTwice words = words::eraseTaster(voice(), person.name, ErasureKind::words);
  const words::AskTwice all = words::eraseTaster(voice(), person.name, ErasureKind::everything);
  m_eraseWordsFirst = shown(words.first);
  m_eraseWordsSecond = shown(words.second);
  m_eraseAllFirst = shown(all.first);
  m_eraseAllSecond = shown(all.second);
  showPerson();
  emit changed();
}

void PeopleModel::leave() {
  m_open = false;
  settle();
  emit changed();
}

void PeopleModel::save() {
  Taster person;
  person.id = m_id;
  person.name = plain(m_name);
  person.nickname = plain(m_nickname);
  person.isBrewer = m_isBrewer;
  person.archived = m_archived;
  changeShelf([person, archived = m_archivedShown](Cellar& cellar) {
    shelf::save(cellar.store(), cellar.chance, person);
    return look(cellar, archived);
  }, [this](Read read) {
    m_open = false;
    show(std::move(read));
  });
}

void PeopleModel::archive(bool archived) {
  changeShelf([id = m_id, archived, all = m_archivedShown](Cellar& cellar) {
    if (archived) shelf::archivePerson(cellar.store(), cellar.clock, id);
    else shelf::bringBackPerson(cellar.store(), id);
    return look(cellar, all);
  }, [this](Read read) {
    m_open = false;
    show(std::move(read));
  });
}

void PeopleModel::erase(ErasureKind kind) {
  struct Done {
    session::Erased erased;
    Read read;
  };
  ask([id = m_id, kind, all = m_archivedShown](Cellar& cellar) {
    session::Erased erased = session::erase(cellar.store(), cellar.clock, cellar.chance, id, kind, true);
    return Done{std::move(erased), look(cellar, all)};
  }, [this](const Done& done) {
    m_open = false;
    m_erasedLine = done.erased.bytesGone ? tr("Forgotten: it is gone from this file.")
                                         : tr("Forgotten. Another program reads the file just now, so its last traces go when Oddglass is started next.");
    if (!done.erased.copies.empty()) {
      QStringList copies;
      for (const auto& copy : done.erased.copies) copies << QString::fromStdString(copy.string());
      m_erasedLine += QStringLiteral(" ") + tr("These backups still hold the person; delete them by hand: %1").arg(copies.join(tr(", ")));
    }
    show(done.read);
    emit forgotten();
  });
}

}  // namespace oddglass::ui
