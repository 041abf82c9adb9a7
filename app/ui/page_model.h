#pragma once
#include <QObject>  // first in every header that Qt reads itself: its reader trips over the standard library otherwise
#include "domain/state.h"
#include "ui/current.h"
#include "ui/notice.h"
#include "ui/router.h"
#include "ui/worker.h"

#include <QtQml/qqmlregistration.h>

namespace oddglass::ui {

/// What every view model is given.
struct Stage {
  Worker& worker;
  Router& router;
  Notice& notice;
  Current& current;
};

// Those that derive from it name it in full: the 6.4 tools do not look it up otherwise.
/// What the view models of all pages share: one signal for all that they show, and what is wrong with a form.
class PageModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString wrongField READ wrongField NOTIFY wrongChanged)
  Q_PROPERTY(QString wrong READ wrong NOTIFY wrongChanged)
  Q_PROPERTY(QString volumeUnit READ volumeUnit NOTIFY changed)
  Q_PROPERTY(QString gravityUnit READ gravityUnit NOTIFY changed)

public:
  PageModel(const Stage& stage, QObject* parent) : QObject(parent), m_stage(stage) {}
  /// The name of the field that the last problem was about; empty when nothing is wrong with the form.
  const QString& wrongField() const { return m_wrongField; }
  /// What is wrong with it, in one sentence.
  const QString& wrong() const { return m_wrong; }
  /// The units in which fields take amounts and gravities.
  static QString volumeUnit();
  static QString gravityUnit();

signals:
  void changed();
  void wrongChanged();
  void shelfChanged();

protected:
  /// Runs a command or a question on the worker; a problem goes to the form when it names one of its fields, else to the banner.
  template <class Work, class Done>
  void ask(Work work, Done done) {
    m_stage.worker.run(std::move(work), [this, done = std::move(done)](auto&&... result) mutable {
      settle();
      done(std::forward<decltype(result)>(result)...);
    }, [this](const Problem& problem) { fail(problem); });
  }
  /// The same for what changes the shelf, and can be taken back afterwards.
  template <class Work, class Done>
  void changeShelf(Work work, Done done) {
    ask(std::move(work), [this, done = std::move(done)](auto&&... result) mutable {
      done(std::forward<decltype(result)>(result)...);
      emit shelfChanged();
    });
  }
  /// The same for things of which only the newest answer matters.
  template <class Work, class Done>
  void askNewest(Lane& lane, Work work, Done done) {
    m_stage.worker.runNewest(lane, std::move(work), [this, done = std::move(done)](auto&&... result) mutable {
      done(std::forward<decltype(result)>(result)...);
    }, [this](const Problem& problem) { fail(problem); });
  }
  /// Says a problem. A view model overrides this when a problem means a question (such as "again?").
  virtual void fail(const Problem& problem);
  /// Nothing is wrong any more.
  void settle();
  void go(Router::Page page) { m_stage.router.go(page); }
  /// Names of fields whose problems are shown beside them.
  void nameFields(std::initializer_list<const char*> names);

  Stage m_stage;

private:
  QStringList m_fields;
  QString m_wrongField;
  QString m_wrong;
};

/// The page on which a sealed session goes on, by where it stands.
Router::Page pageOf(State state);
/// The sentence of a problem, in the language of the window.
QString sentenceOf(const Problem& problem);
/// Between the window's text and everybody else's.
inline QString shown(const std::string& text) { return QString::fromStdString(text); }
inline QStringList shownAll(const std::vector<std::string>& texts) {
  QStringList all;
  for (const std::string& text : texts) all << shown(text);
  return all;
}
inline std::string plain(const QString& text) { return text.toStdString(); }

}  // namespace oddglass::ui
