#include "ui/awake.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QFileInfo>
#include <QGuiApplication>
#include <QStandardPaths>
#include <optional>

namespace oddglass::ui {
namespace {

QDBusMessage call(const char* method) {
  return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"), QStringLiteral("/org/freedesktop/ScreenSaver"), QStringLiteral("org.freedesktop.ScreenSaver"),
                                        QString::fromLatin1(method));
}

class Desktop : public ScreenSaver {
public:
  explicit Desktop(QDBusConnection bus) : m_bus(std::move(bus)) {}
  void inhibit(const QString& reason, std::function<void(std::uint32_t)> granted) override {
    QDBusMessage wish = call("Inhibit");
    wish << QGuiApplication::applicationDisplayName() << reason;
    auto* answer = new QDBusPendingCallWatcher(m_bus.asyncCall(wish));
    QObject::connect(answer, &QDBusPendingCallWatcher::finished, answer, [answer, granted = std::move(granted)] {
      const QDBusPendingReply<uint> reply = *answer;
      if (!reply.isError()) granted(reply.value());
      answer->deleteLater();
    });
  }
  void release(std::uint32_t wish) override {
    QDBusMessage over = call("UnInhibit");
    over << uint(wish);
    m_bus.send(over);
  }

private:
  QDBusConnection m_bus;
};

}  // namespace

std::unique_ptr<ScreenSaver> desktopScreenSaver() {
  // Where no bus is running, asking for one would start it.
  const bool isThere = qEnvironmentVariableIsSet("DBUS_SESSION_BUS_ADDRESS") || QFileInfo::exists(QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation) + QStringLiteral("/bus"));
  if (!isThere) return nullptr;
  const QDBusConnection bus = QDBusConnection::sessionBus();
  return bus.isConnected() ? std::make_unique<Desktop>(bus) : nullptr;
}

struct Awake::Wish {
  std::optional<std::uint32_t> number;
  bool isOver = false;
};

Awake::Awake(QObject* parent) : QObject(parent) {}
Awake::~Awake() { giveBack(); }

void Awake::use(std::unique_ptr<ScreenSaver> saver) {
  giveBack();
  m_saver = std::move(saver);
  if (m_needed) ask();
}

void Awake::setNeeded(bool needed) {
  if (needed == m_needed) return;
  m_needed = needed;
  if (needed) ask();
  else giveBack();
}

void Awake::ask() {
  if (!m_saver) return;
  m_wish = std::make_shared<Wish>();
  m_saver->inhibit(tr("A tasting is at the table."), [wish = m_wish, saver = std::weak_ptr(m_saver)](std::uint32_t number) {
    wish->number = number;
    if (const auto there = saver.lock(); there && wish->isOver) there->release(number);
  });
}

void Awake::giveBack() {
  if (!m_wish) return;
  m_wish->isOver = true;
  if (m_wish->number) m_saver->release(*m_wish->number);
  m_wish.reset();
}

}  // namespace oddglass::ui
