#pragma once
#include "blinding/chance.h"
#include "domain/chance.h"
#include "ui/app.h"

#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <functional>
#include <memory>
#include <set>
#include <string>

namespace oddglass::test {

/// The real window over a store of its own in a folder that goes away. Anything that Qt complains of is kept in `complaints`.
class Window {
public:
  /// Opens the program; a `folder` that is given is used again, as after a crash.
  explicit Window(const std::string& folder = {});
  /// The same with time and chance of the caller's, who keeps them alive.
  Window(const std::string& folder, Clock& clock, Chance& chance);
  ~Window();
  ui::App& app() { return *m_app; }
  QQuickWindow& window() { return *m_window; }
  std::string folder() const;

  /// Lets the program work until `reached()`; false when that does not happen within the time that a slow machine may need.
  bool until(const std::function<bool()>& reached);
  /// Lets everything that was asked of the store come back.
  void settle();
  /// The visible item of that name on the page or in the overlay; nothing when it is not there.
  QQuickItem* item(const std::string& name);
  /// Waits until everything that has moved stands where it belongs.
  void nextFrame();
  void scrollTo(QQuickItem* target);
  /// From now on `click` and `type` reach everything by Tab and press Space: the mouse is gone.
  void useKeyboardAlone() { m_byKeyboard = true; }
  /// Clicks in the middle of an item; scrolls to it first, as a person would.
  void click(const std::string& name);
  /// Puts the keyboard into a field and types; what stood there is replaced.
  void type(const std::string& name, const std::string& text);
  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
  /// Tabs until the item of that name has the keyboard; false when the round is over without it.
  bool tabTo(const std::string& name);
  std::string text(const std::string& name);
  /// Saves the window as a picture in the build folder.
  void shoot(const std::string& name);
  std::string complaints() const;
  /// The name of the page: "MyCups".
  std::string page() const;

private:
  void open(Clock& clock, Chance& chance);
  bool m_byKeyboard = false;
  QTemporaryDir m_ownFolder;
  std::string m_folder;
  SystemClock m_clock;
  blinding::SystemChance m_chance;
  std::unique_ptr<ui::App> m_app;
  std::unique_ptr<QQmlApplicationEngine> m_engine;
  QQuickWindow* m_window = nullptr;
};

/// Every visible item of a window, children and delegates included.
void walk(QQuickItem* item, const std::function<void(QQuickItem*)>& visit);

}  // namespace oddglass::test
