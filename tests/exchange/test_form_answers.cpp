#include "exchange/form_answers.h"
#include "exchange/write_out.h"
#include "refused.h"
#include "sheet_evening.h"
#include "told.h"

#include <algorithm>
#include <sstream>

using namespace oddglass;
using namespace oddglass::exchange;
using testing::asked;

namespace {

/// A score sheet with two coded cups for everybody, sealed, with all at the table.
struct FormNight : testing::SheetEvening {
  explicit FormNight(int rounds = 1) : SheetEvening(rounds, 0, 4) {
    Draft draft = asSheet({asked(ItemKind::line, "sweet"), asked(ItemKind::check, "butter"), asked(ItemKind::check, "green apple"), asked(ItemKind::liking), asked(ItemKind::words, "", Part::last, false)});
    invite(draft);
    draft.rounds = rounds;
    session::saveDraft(*store, clock, draft);
    sealAndSit();
  }
  std::filesystem::path write(const std::string& text) {
    const auto path = folder / "form.csv";
    std::ofstream(path, std::ios::binary) << text;
    return path;
  }
  std::string code(int place, int position) { return std::to_string(tasting::nextFlight(*store, session, {place}).value().cups.at(static_cast<std::size_t>(position - 1)).code.value); }
  std::vector<tasting::HandIn> read(const std::string& text, const Meanings& meanings = {}) { return readForm(*store, session, write(text), meanings); }
  /// The value of a question about the cup at a position.
  int value(const tasting::HandIn& in, int item, int position) {
    for (const tasting::Reply& reply : in.replies)
      if (reply.item.value == item && std::to_string(reply.code.value) == code(in.place.value, position)) return reply.value;
    return -1;
  }
};

const std::string wideHead = "Timestamp,Your name,How sweet is the left one?,How sweet is the right one?,Left one: what do you notice?,Right one: what do you notice?,liking@1,liking@2,Anything else?\n";
const Meanings wideMeans{{"Your name", "name"}, {"How sweet is the left one?", "line:sweet@1"}, {"How sweet is the right one?", "1@2"}, {"Left one: what do you notice?", "check@1"},
                         {"Right one: what do you notice?", "check@2"}, {"Anything else?", "words"}};

}  // namespace

TEST_CASE("A table with a row a person and columns of any names is taken, and the evening holds it") {
  FormNight night;
  const auto all = night.read(wideHead + "12:01,friend a,40,61,\"butter; Green Apple\",,7,3,=1+1\n12:02,Friend B,0,100,,butter,1,9,\n", wideMeans);
  REQUIRE(all.size() == 2);
  CHECK(all[0].place == Place{1});
  CHECK(night.value(all[0], 1, 1) == 40);
  CHECK(night.value(all[0], 1, 2) == 61);
  CHECK(night.value(all[0], 2, 1) == 1);
  CHECK(night.value(all[0], 3, 1) == 1);
  CHECK(night.value(all[0], 2, 2) == 0);
  CHECK(night.value(all[0], 4, 2) == 3);
  CHECK(night.value(all[1], 2, 2) == 1);
  CHECK(night.value(all[1], 3, 2) == 0);
  CHECK(tasting::handInTable(*night.store, night.clock, night.chance, night.session, std::nullopt, all).size() == 2);
  CHECK(tasting::board(*night.store, night.session).locked == 2);
  // What looks like a formula is kept as it was written, and goes out so that no spreadsheet works it out.
  session::close(*night.store, night.clock, night.session);
  session::reveal(*night.store, night.clock, night.session);
  const RevealedSession came = session::revealed(*night.store, night.session);
  CHECK(came.typedIn.fromFile == 2);
  CHECK(came.typedIn.byOthers == 2);
  CHECK(std::ranges::any_of(came.panel.front().replies, [](const SheetReply& reply) { return reply.words == "=1+1"; }));
  bool isHarmless = false;
  for (const auto& file : exportCsv(*night.store, night.session, night.folder / "csv")) {
    std::ostringstream text;
    text << std::ifstream(file).rdbuf();
    CHECK(text.str().find(",=1+1") == std::string::npos);
    isHarmless = isHarmless || text.str().find("'=1+1") != std::string::npos;
  }
  CHECK(isHarmless);
}

TEST_CASE("A table with a row a cup is taken, cups named by code or by place, and the same table twice counts once") {
  FormNight night;
  const std::string head = "place;cup;line:sweet;check:butter;check:green apple;liking;words\n";
  const std::string rows = "3;" + night.code(3, 2) + ";12;1;;4;late\n3;1;88;;1;6;late\n";
  const auto all = night.read(head + rows);
  REQUIRE(all.size() == 1);
  CHECK(night.value(all[0], 1, 2) == 12);
  CHECK(night.value(all[0], 2, 1) == 0);
  CHECK(night.value(all[0], 3, 1) == 1);
  tasting::handInTable(*night.store, night.clock, night.chance, night.session, std::nullopt, all);
  CHECK(tasting::handInTable(*night.store, night.clock, night.chance, night.session, std::nullopt, all).at(0).wasThere());
}

TEST_CASE("Rounds stand in a column, or in the meaning of each; a round without a word is no flight") {
  FormNight night(2);
  const std::string some = ",line:sweet@1#1,line:sweet@2#1,check@1#1,check@2#1,liking@1#1,liking@2#1,line:sweet@1#2,line:sweet@2#2,check@1#2,check@2#2,liking@1#2,liking@2#2\n";
  const auto all = night.read("place" + some + "1,1,2,,,3,4,5,6,butter,,7,8\n2,1,2,,,3,4,,,,,,\n");
  REQUIRE(all.size() == 3);
  CHECK(all[2].round == Round{2});
  CHECK(all[2].place == Place{1});
  const auto rows = night.read("place,round,line:sweet@1,line:sweet@2,check@1,check@2,liking@1,liking@2\n4,2,1,2,,,3,4\n4,1,1,2,,,3,4\n");
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].round == Round{1});
  CHECK(testing::problemOf([&] { night.read("place,line:sweet@1,line:sweet@2,check@1,check@2,liking@1,liking@2\n4,1,2,,,3,4\n"); }).argument() == "line:sweet@1");
}

TEST_CASE("A cup is chosen by its code or by where it stands, and two in one cell") {
  testing::Evening evening;
  Draft draft = session::draft(*evening.store, evening.session);
  draft.method = Method::tetrad;
  draft.methodChosen = true;
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.seal();
  evening.sitAll();
  const auto path = evening.folder / "form.csv";
  const auto cups = tasting::nextFlight(*evening.store, evening.session, {1}).value().cups;
  std::ofstream(path) << "place,Which two?,sureness,How did you know?\n1,\"" << cups[1].code.value << ", 4\",sure,taste\n2,1 3,2,6\n";
  const auto all = readForm(*evening.store, evening.session, path, {{"Which two?", "choose"}, {"How did you know?", "clue"}});
  REQUIRE(all.size() == 2);
  CHECK(all[0].replies[0].value == cups[1].code.value);
  CHECK(all[0].replies[1].value == cups[3].code.value);
  CHECK(tasting::handInTable(*evening.store, evening.clock, evening.chance, evening.session, std::nullopt, all).size() == 2);
}

TEST_CASE("One wrong cell refuses the whole table, by line and column, and nothing is kept") {
  FormNight night;
  const std::string good = "x,Friend A,40,61,,,7,3,\n";
  const auto refused = [&](const std::string& row, const std::string& column, const std::string& line = "3") {
    INFO(row);
    const Problem problem = testing::problemOf([&] { night.read(wideHead + good + row + "\n", wideMeans); });
    CHECK(problem.trouble() == Trouble::badFile);
    CHECK(problem.argument() == column);
    CHECK(said(problem, "line") == line);
  };
  refused("x,Friend Z,1,2,,,3,4,", "Your name");
  refused("x,Friend B,101,2,,,3,4,", "How sweet is the left one?");
  refused("x,Friend B,1,two,,,3,4,", "How sweet is the right one?");
  refused("x,Friend B,1,2,mud,,3,4,", "Left one: what do you notice?");
  refused("x,Friend B,1,2,,,3,,", "liking@2");   // an answer is missing
  refused("x,Friend A,40,61,,,7,3,", "How sweet is the left one?");   // the same person twice
  const std::string head = "place,cup,line:sweet,check:butter,check:green apple,liking\n";
  for (const auto& [row, column] : {std::pair("3,9,1,,,4", "cup"), {"3,482482,1,,,4", "cup"}, {"99,1,1,,,4", "place"}}) {
    INFO(row);
    CHECK(testing::problemOf([&] { night.read(head + row + "\n"); }).argument() == column);
  }
  // Codes of another place are none of this one's.
  CHECK(testing::problemOf([&] { night.read(head + "3," + night.code(1, 1) + ",1,,,4\n"); }).argument() == "cup");
  CHECK(testing::problemOf([&] { night.read("Mood,liking@1\n1,2\n"); }).argument() == "place");
  CHECK(testing::problemOf([&] { night.read(wideHead + good, {{"Mood", "liking"}}); }).argument() == "Mood");
  CHECK(testing::problemOf([&] { night.read(wideHead + good, {{"Timestamp", "colour"}}); }).argument() == "Timestamp");
  CHECK(testing::problemOf([&] { night.read(wideHead + good, {{"Timestamp", "name"}, {"Your name", "name"}}); }).argument() == "Your name");
  CHECK(tasting::board(*night.store, night.session).locked == 0);
}

TEST_CASE("The columns are shown as they would be taken") {
  FormNight night;
  const auto columns = formColumns(*night.store, night.session, night.write(wideHead + "x,Friend A,40,61,,,7,3,\n"), {{"How sweet is the left one?", "line:sweet@1"}});
  std::vector<std::string> means;
  for (const FormColumn& each : columns) means.push_back(each.means);
  CHECK(means == std::vector<std::string>{"-", "-", "1@1", "-", "-", "-", "4@1", "4@2", "-"});
  CHECK(columns[1].example == "Friend A");
}
