#include "cellar.h"
#include "shelf/beverages.h"
#include "shelf/bring.h"
#include "shelf/notes.h"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace oddglass;
using namespace oddglass::shelf;
using testing::Cellar;
using testing::problemOf;
using testing::troubleOf;

namespace {

struct Book : Cellar {
  std::unique_ptr<store::Store> open_ = open();
  store::Store& store = *open_;
  BeverageId drink = drinkNamed("Hedge Mead");

  BeverageId drinkNamed(const std::string& name) {
    Beverage beverage;
    beverage.name = name;
    return save(store, chance, beverage);
  }

  Note note(NoteKind kind, const std::string& day = "2026-03-14", const std::string& text = "") const {
    Note result;
    result.beverage = drink;
    result.kind = kind;
    result.doneOn = day;
    result.text = text;
    return result;
  }

  Note added(Note note) {
    note.id = add(store, chance, note);
    return note;
  }
};

using Refusal = std::pair<Trouble, std::string>;

}  // namespace

TEST_CASE("notes stand by their day, the last first") {
  Book book;
  Note reading = book.note(NoteKind::reading, "2026-01-02");
  reading.gravity = 10550;
  reading = book.added(reading);
  const Note racked = book.added(book.note(NoteKind::racked, "2026-02-01"));
  const Note late = book.added(book.note(NoteKind::other, "2026-01-02", "'; DROP TABLE batch_note; --"));
  CHECK(notesOf(book.store, book.drink) == std::vector<Note>{racked, late, reading});
  CHECK(notesOf(book.store, book.drinkNamed("Other")).empty());
}

TEST_CASE("a correction takes the place of the note; both stay in the store") {
  Book book;
  const Note first = book.added(book.note(NoteKind::addition, "2026-01-02", "20 g of nutrient"));
  Note better = book.note(NoteKind::addition, "2026-01-03", "2 g of nutrient");
  better.replaces = first.id;
  better = book.added(better);
  CHECK(notesOf(book.store, book.drink) == std::vector<Note>{better});
  Note again = better;
  again.text = "3 g of nutrient";
  CHECK(troubleOf([&] { add(book.store, book.chance, again); }) == Trouble::alreadyThere);
  again.replaces = better.id;
  again = book.added(again);
  CHECK(notesOf(book.store, book.drink) == std::vector<Note>{again});
  CHECK(book.store.db().execAndGet("SELECT count(*) FROM batch_note").getInt() == 3);
}

TEST_CASE("a note that is taken back is gone from the list and cannot be corrected") {
  Book book;
  const Note wrong = book.added(book.note(NoteKind::racked));
  const Note kept = book.added(book.note(NoteKind::bottled));
  withdraw(book.store, book.chance, wrong.id);
  CHECK(notesOf(book.store, book.drink) == std::vector<Note>{kept});
  CHECK(troubleOf([&] { withdraw(book.store, book.chance, wrong.id); }) == Trouble::alreadyThere);
  CHECK(troubleOf([&] { withdraw(book.store, book.chance, {"x"}); }) == Trouble::unknown);
  Note correction = book.note(NoteKind::racked);
  correction.replaces = wrong.id;
  CHECK(troubleOf([&] { add(book.store, book.chance, correction); }) == Trouble::alreadyThere);
}

TEST_CASE("stabilising twice asks first") {
  Book book;
  const Note first = book.added(book.note(NoteKind::stabilised, "2026-03-14"));
  const Problem problem = problemOf([&] { add(book.store, book.chance, book.note(NoteKind::stabilised, "2026-04-01")); });
  CHECK(problem.trouble() == Trouble::alreadyStabilised);
  CHECK(problem.values().at("day") == "2026-03-14");
  CHECK(notesOf(book.store, book.drink).size() == 1);

  SECTION("yes, again") {
    add(book.store, book.chance, book.note(NoteKind::stabilised, "2026-04-01"), true);
    CHECK(notesOf(book.store, book.drink).size() == 2);
  }
  SECTION("a correction of the first is not a second") {
    Note better = book.note(NoteKind::stabilised, "2026-03-15");
    better.replaces = first.id;
    book.added(better);
    CHECK(notesOf(book.store, book.drink).size() == 1);
    CHECK(problemOf([&] { add(book.store, book.chance, book.note(NoteKind::stabilised)); }).values().at("day") == "2026-03-15");
  }
  SECTION("turning another note into it asks as well") {
    const Note racked = book.added(book.note(NoteKind::racked));
    Note turned = book.note(NoteKind::stabilised);
    turned.replaces = racked.id;
    CHECK(troubleOf([&] { add(book.store, book.chance, turned); }) == Trouble::alreadyStabilised);
  }
  SECTION("one that was taken back does not count") {
    withdraw(book.store, book.chance, first.id);
    add(book.store, book.chance, book.note(NoteKind::stabilised, "2026-04-01"));
    CHECK(notesOf(book.store, book.drink).size() == 1);
  }
  SECTION("another drink is another matter") {
    Note other = book.note(NoteKind::stabilised);
    other.beverage = book.drinkNamed("Other");
    add(book.store, book.chance, other);
    CHECK(notesOf(book.store, other.beverage).size() == 1);
  }
}

TEST_CASE("what was seen in a bottle has a level, other notes have none, and a deed names what it was against") {
  Book book;
  Note haze = book.note(NoteKind::haze);
  haze.level = 2;
  haze = book.added(haze);
  Note gusher = book.note(NoteKind::gusher);
  gusher.level = 3;
  gusher = book.added(gusher);
  Note racked = book.note(NoteKind::racked);
  racked.word = " rotten egg ";
  racked = book.added(racked);
  Note changed = book.added(book.note(NoteKind::changed, "2026-03-14", "another yeast"));
  const auto notes = notesOf(book.store, book.drink);
  REQUIRE(notes.size() == 4);
  CHECK(notes[3].level == 2);
  CHECK_FALSE(notes[2].level);
  CHECK(notes[1].word == "rotten egg");
  CHECK(notes[0].kind == NoteKind::changed);
}

TEST_CASE("every wrong field of a note is named") {
  Book book;
  const auto refused = [&](Note note) {
    const Problem problem = problemOf([&] { add(book.store, book.chance, note); });
    CHECK(notesOf(book.store, book.drink).empty());
    return Refusal{problem.trouble(), problem.argument()};
  };
  CHECK(refused(book.note(NoteKind::racked, "")) == Refusal{Trouble::empty, "done_on"});
  CHECK(refused(book.note(NoteKind::changed)) == Refusal{Trouble::empty, "text"});
  CHECK(refused(book.note(NoteKind::haze)) == Refusal{Trouble::empty, "level"});
  Note cloudy = book.note(NoteKind::sediment);
  cloudy.level = 4;
  CHECK(refused(cloudy) == Refusal{Trouble::outOfRange, "level"});
  Note against = book.note(NoteKind::racked);
  against.word = std::string(61, 'a');
  CHECK(refused(against) == Refusal{Trouble::tooLong, "word"});
  CHECK(refused(book.note(NoteKind::racked, "2026-13-01")) == Refusal{Trouble::notADay, "done_on"});
  CHECK(refused(book.note(NoteKind::reading)) == Refusal{Trouble::empty, "gravity"});
  CHECK(refused(book.note(NoteKind::addition)) == Refusal{Trouble::empty, "text"});
  CHECK(refused(book.note(NoteKind::other, "2026-03-14", " ")) == Refusal{Trouble::empty, "text"});
  CHECK(refused(book.note(NoteKind::other, "2026-03-14", std::string(4001, 'a'))) == Refusal{Trouble::tooLong, "text"});
  Note reading = book.note(NoteKind::reading);
  reading.gravity = 105;
  CHECK(refused(reading) == Refusal{Trouble::outOfRange, "gravity"});
  Note lost = book.note(NoteKind::racked);
  lost.beverage.text = "x";
  CHECK(refused(lost) == Refusal{Trouble::unknown, "beverage"});
  Note astray = book.note(NoteKind::racked);
  astray.replaces = NoteId{"x"};
  CHECK(refused(astray) == Refusal{Trouble::unknown, "note"});
  Note elsewhere = book.note(NoteKind::racked);
  elsewhere.beverage = book.drinkNamed("Other");
  astray.replaces = add(book.store, book.chance, elsewhere);
  CHECK(refused(astray) == Refusal{Trouble::notAChoice, "note"});
  book.added(book.note(NoteKind::other, "2026-03-14", std::string(4000, 'a')));
  CHECK(notesOf(book.store, book.drink).size() == 1);
}

TEST_CASE("notes from elsewhere keep their ids, corrections and withdrawals") {
  Book book;
  Note first = book.note(NoteKind::racked), better = first, gone = first;
  first.id.text = std::string(32, '1');
  better.id.text = std::string(32, '2');
  better.replaces = first.id;
  CHECK(bring(book.store, first));
  CHECK(bring(book.store, better));
  CHECK_FALSE(bring(book.store, first));
  CHECK(notesOf(book.store, book.drink) == std::vector<Note>{better});
  gone.id.text = std::string(32, '3');
  gone.withdrawn = true;
  CHECK(problemOf([&] { bring(book.store, gone); }).argument() == "note");
  gone.replaces = better.id;
  CHECK(bring(book.store, gone));
  CHECK(notesOf(book.store, book.drink).empty());
}
