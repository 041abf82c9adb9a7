#include "ui/window.h"

#include "store/store.h"

#include <QAccessible>
#include <QDeadlineTimer>
#include <QDir>
#include <QMetaEnum>
#include <QtTest/QTest>
#include <algorithm>
#include <catch2/catch.hpp>

namespace oddglass::test {
namespace {

std::string said;

void listen(QtMsgType type, const QMessageLogContext&, const QString& message) {
  // Run as root without a session, Qt says so of the folder for its sockets; that is no complaint about the program.
  if (message.contains(QStringLiteral("XDG_RUNTIME_DIR"))) return;
  if (type != QtDebugMsg && type != QtInfoMsg) said += message.toStdString() + "\n";
}

}  // namespace

void walk(QQuickItem* item, const std::function<void(QQuickItem*)>& visit) {
  if (!item->isVisible()) return;
  visit(item);
  for (QQuickItem* child : item->childItems()) walk(child, visit);
}

Window::Window(const std::string& folder) : m_folder(folder.empty() ? m_ownFolder.path().toStdString() : folder) { open(m_clock, m_chance); }

Window::Window(const std::string& folder, Clock& clock, Chance& chance) : m_folder(folder) { open(clock, chance); }

void Window::open(Clock& clock, Chance& chance) {
  said.clear();
  qInstallMessageHandler(listen);
  const std::string file = m_folder + "/cellar.oddglass";
  auto cellar = std::make_unique<ui::Cellar>([file, &clock, &chance] { return store::Store::open(file, store::Access::write, clock, chance); }, clock, chance);
  m_app = std::make_unique<ui::App>(std::move(cellar), QString::fromStdString(m_folder + "/window.ini"), QStringLiteral(ODDGLASS_DEMO));
  m_engine = std::make_unique<QQmlApplicationEngine>();
  m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
  QObject::connect(m_app->preferences(), &ui::Preferences::spokenChanged, m_engine.get(), &QQmlEngine::retranslate);
  m_engine->setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(m_app.get())}});
  m_engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Oddglass/Main.qml")));
  REQUIRE(m_engine->rootObjects().size() == 1);
  m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().first());
  REQUIRE(m_window);
  m_window->requestActivate();
  REQUIRE(QTest::qWaitForWindowExposed(m_window));
  REQUIRE(QTest::qWaitForWindowActive(m_window));
  m_app->start();
  REQUIRE(until([this] { return item("mainInside"); }));
  settle();
}

Window::~Window() {
  m_engine.reset();
  m_app.reset();
  qInstallMessageHandler(nullptr);
}

std::string Window::folder() const { return m_folder; }

bool Window::until(const std::function<bool()>& reached) {
  return QTest::qWaitFor(reached, 30000);
}

void Window::settle() {
  REQUIRE(until([this] { return !m_app->worker().isBusy(); }));
  QCoreApplication::processEvents();
  REQUIRE(until([this] { return !m_app->worker().isBusy(); }));
}

QQuickItem* Window::item(const std::string& name) {
  QQuickItem* found = nullptr;
  walk(m_window->contentItem(), [&](QQuickItem* item) {
    if (!found && item->objectName().toStdString() == name) found = item;
  });
  return found;
}

void Window::nextFrame() {
  bool drawn = false;
  const auto listening = QObject::connect(m_window, &QQuickWindow::frameSwapped, m_window, [&drawn] { drawn = true; });
  m_window->update();
  REQUIRE(until([&drawn] { return drawn; }));
  QObject::disconnect(listening);
}

void Window::scrollTo(QQuickItem* target) {
  nextFrame();
  for (QQuickItem* up = target->parentItem(); up; up = up->parentItem()) {
    if (!up->inherits("QQuickFlickable")) continue;
    const double at = up->property("contentY").toDouble();
    const double top = target->mapToItem(up, QPointF()).y();
    if (top < 0 || top + target->height() > up->height()) {
      const double most = std::max(0.0, up->property("contentHeight").toDouble() - up->height());
      up->setProperty("contentY", std::clamp(at + top - up->height() / 3, 0.0, most));
    }
  }
  nextFrame();
}

void Window::click(const std::string& name) {
  QQuickItem* target = item(name);
  INFO("click " << name << " on page " << static_cast<int>(m_app->router()->page()) << ", banner: " << m_app->notice()->message().toStdString());
  CAPTURE(said);
  REQUIRE(target);
  if (m_byKeyboard) {
    REQUIRE(tabTo(name));
    return key(Qt::Key_Space);
  }
  scrollTo(target);
  const QPointF middle = target->mapToScene(QPointF(target->width() / 2, target->height() / 2));
  INFO("at " << middle.x() << "," << middle.y());
  REQUIRE(QRectF(0, 0, m_window->width(), m_window->height()).contains(middle));
  QTest::mouseClick(m_window, Qt::LeftButton, Qt::NoModifier, middle.toPoint());
  settle();
}

void Window::type(const std::string& name, const std::string& text) {
  QQuickItem* target = item(name + "Input");
  INFO("type into " << name);
  REQUIRE(target);
  if (m_byKeyboard)
    REQUIRE(tabTo(name + "Input"));
  else
    target->forceActiveFocus(Qt::TabFocusReason);
  QTest::keyClick(m_window, Qt::Key_A, Qt::ControlModifier);
  for (const QChar letter : QString::fromStdString(text)) QTest::keyClick(m_window, letter.toLatin1());
  settle();
}

void Window::key(Qt::Key key, Qt::KeyboardModifiers with) {
  QTest::keyClick(m_window, key, with);
  settle();
}

bool Window::tabTo(const std::string& name) {
  for (int step = 0; step < 200; ++step) {
    QQuickItem* at = m_window->activeFocusItem();
    if (at && at->objectName().toStdString() == name) return true;
    QTest::keyClick(m_window, Qt::Key_Tab);
  }
  return false;
}

std::string Window::text(const std::string& name) {
  QQuickItem* found = item(name);
  return found ? found->property("text").toString().toStdString() : std::string();
}

void Window::shoot(const std::string& name) {
  QDir().mkpath(QStringLiteral(SHOTS));
  const QImage picture = m_window->grabWindow();
  REQUIRE(picture.save(QStringLiteral(SHOTS "/") + QString::fromStdString(name) + QStringLiteral(".png")));
}

std::string Window::complaints() const { return said; }

std::string Window::page() const {
  return QMetaEnum::fromType<ui::Router::Page>().valueToKey(static_cast<int>(m_app->router()->page()));
}

}  // namespace oddglass::test
