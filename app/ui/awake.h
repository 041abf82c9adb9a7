#pragma once
#include <QObject>

#include <cstdint>
#include <functional>
#include <memory>

namespace oddglass::ui {

/// What can keep a screen from going dark.
class ScreenSaver {
public:
  virtual ~ScreenSaver() = default;
  /// Asks for it; `granted` is called with the number of the wish, at once, later or never.
  virtual void inhibit(const QString& reason, std::function<void(std::uint32_t)> granted) = 0;
  virtual void release(std::uint32_t wish) = 0;
};

/// The desktop's, over org.freedesktop.ScreenSaver on the session bus; nothing where there is no such bus.
std::unique_ptr<ScreenSaver> desktopScreenSaver();

/// Keeps the screen awake while it is needed: one wish at a time, given back when it is not needed any more and when the program ends. Without a
/// screen saver it does nothing.
class Awake : public QObject {
  Q_OBJECT

public:
  explicit Awake(QObject* parent = nullptr);
  ~Awake() override;
  /// From now on the wish goes there.
  void use(std::unique_ptr<ScreenSaver> saver);
  void setNeeded(bool needed);

private:
  void ask();
  void giveBack();
  /// Answers may come when nobody is there any more; they share what is known.
  struct Wish;
  std::shared_ptr<Wish> m_wish;
  std::shared_ptr<ScreenSaver> m_saver;
  bool m_needed = false;
};

}  // namespace oddglass::ui
