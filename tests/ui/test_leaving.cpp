// A table that is open: the screen stays awake, closing the window is asked about, and going on lands where it was left.
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

#include <vector>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

/// What a screen saver was asked for.
struct Asked {
  std::vector<std::uint32_t> held;
  int wishes = 0;
};

class Fake : public ui::ScreenSaver {
public:
  Fake(Asked& asked, bool late = false) : m_asked(asked), m_late(late) {}
  void inhibit(const QString& reason, std::function<void(std::uint32_t)> granted) override {
    CHECK_FALSE(reason.isEmpty());
    const auto wish = static_cast<std::uint32_t>(++m_asked.wishes);
    m_asked.held.push_back(wish);
    if (m_late) later = [granted = std::move(granted), wish] { granted(wish); };
    else granted(wish);
  }
  void release(std::uint32_t wish) override { std::erase(m_asked.held, wish); }
  std::function<void()> later;

private:
  Asked& m_asked;
  bool m_late;
};

}  // namespace

TEST_CASE("a wish to stay awake is made once and given back, also when it is granted late or nobody is there to ask") {
  Asked asked;
  {
    ui::Awake awake;
    awake.setNeeded(true);  // nobody to ask
    awake.use(std::make_unique<Fake>(asked));
    CHECK(asked.held.size() == 1);
    awake.setNeeded(true);
    CHECK(asked.wishes == 1);
    awake.setNeeded(false);
    CHECK(asked.held.empty());
    awake.setNeeded(true);
    CHECK(asked.held.size() == 1);
  }
  CHECK(asked.held.empty());  // with the end of the program
  auto late = std::make_unique<Fake>(asked, true);
  Fake& answering = *late;
  ui::Awake awake;
  awake.use(std::move(late));
  awake.setNeeded(true);
  awake.setNeeded(false);
  CHECK(asked.held.size() == 1);
  answering.later();
  CHECK(asked.held.empty());
}

TEST_CASE("at an open table the screen stays awake, closing is asked about once, and the next start says where it stopped") {
  QTemporaryDir folder;
  Asked asked;
  {
    test::Window at(folder.path().toStdString());
    at.app().table()->awake().use(std::make_unique<Fake>(asked));
    test::sealAnEvening(at, 1, 0, {}, [&] {
      test::chooseMethod(at, "A triangle");
      at.click("takesHowLink");
      CHECK(test::isShown(at, "Triangle: after ISO 4120:2021, not certified."));
    });
    CHECK(asked.held.empty());
    at.click("primaryButton");
    REQUIRE(at.app().router()->page() == Page::PourSheet);
    CHECK(asked.held.size() == 1);
    at.app().router()->go(Page::Places);
    at.settle();
    CHECK(asked.held.empty());  // sealed, and nobody sits yet
    test::sitDown(at, 1);
    CHECK(asked.held.size() == 1);
    test::taste(at, 0);
    at.app().router()->go(Page::Today);
    at.settle();
    CHECK(asked.held.empty());  // the table stands open, but not on this screen
    at.window().close();
    at.settle();
    REQUIRE(at.window().isVisible());
    CHECK(test::isShown(at, "What is locked is safe"));
    at.shoot("closing_asked");
    at.click("closingNo");
    CHECK_FALSE(test::isShown(at, "What is locked is safe"));
    at.window().close();
    at.settle();
    REQUIRE(at.window().isVisible());
    at.window().close();
    at.settle();
    CHECK_FALSE(at.window().isVisible());
    CHECK(at.complaints() == "");
  }
  CHECK(asked.held.empty());
  test::Window again(folder.path().toStdString());
  REQUIRE(again.app().router()->page() == Page::Places);
  CHECK(again.text("headline").starts_with("Interrupted at "));
  CHECK(test::isShown(again, "1 of 1 answers are safe"));
  CHECK(test::isShown(again, "Go on with place 2."));
  again.shoot("interrupted");
  again.click("primaryButton");
  CHECK(again.app().router()->page() == Page::HandOver);
  again.app().router()->go(Page::Places);
  again.settle();
  CHECK(again.text("headline") == "1 of 1 answers are locked.");
}

TEST_CASE("a window without an open table closes at once") {
  test::Window at;
  at.window().close();
  at.settle();
  CHECK_FALSE(at.window().isVisible());
}
