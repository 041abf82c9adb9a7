#pragma once
#include <QObject>
#include <QtQml/qqmlregistration.h>
#include <vector>

namespace oddglass::ui {

/// Which page the window shows. Pages that belong to a taster or to the pourer are never gone back to.
class Router : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(Page page READ page NOTIFY pageChanged)
  Q_PROPERTY(bool tasting READ isTasting NOTIFY pageChanged)
  Q_PROPERTY(int planStep READ planStep NOTIFY pageChanged)
  Q_PROPERTY(bool canGoBack READ canGoBack NOTIFY pageChanged)

public:
  enum class Page {
    Today, Shelf, Beverage, Question, Takes, GiveAways, Care, Seal, PourSheet, Alone, Places, HandOver, MyCups, MySheet, Locked, OpenKey, CameOut, History, Room, OpenRound, People, Card, Words, Word, Paper, TypeIn, Keeping, OverTime, BeginSeries, SideBySide, References
  };
  Q_ENUM(Page)

  using QObject::QObject;
  Page page() const { return m_page; }
  /// True on the pages that are neutral grey, fill the window and have no side column.
  bool isTasting() const { return isTasting(m_page); }
  static bool isTasting(Page page);
  /// 0 to 4 on the five pages on which a tasting is planned, else -1.
  int planStep() const;
  bool canGoBack() const { return !m_behind.empty(); }

  /// Shows a page. From a tasting page nothing is kept to go back to.
  Q_INVOKABLE void go(oddglass::ui::Router::Page page);
  /// Shows one of the five pages of a plan, 0 to 4.
  Q_INVOKABLE void goToStep(int step);
  /// Shows the page before this one, if there is one.
  Q_INVOKABLE void back();

signals:
  void pageChanged();

private:
  Page m_page = Page::Today;
  std::vector<Page> m_behind;
};

}  // namespace oddglass::ui
