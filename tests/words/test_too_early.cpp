#include "cellar.h"
#include "domain/names.h"
#include "plain_voice.h"
#include "words/too_early.h"

#include <algorithm>

using namespace oddglass;
using testing::plainVoice;

namespace {

struct Batch {
  Beverage drink;
  std::vector<Lot> lots;
  std::vector<Note> notes;

  Batch() {
    drink.kind = Kind::mead;
    drink.originalGravity = 10950;
    drink.finalGravity = 10000;
  }
  Note& add(NoteKind kind, const std::string& day) {
    Note note;
    note.kind = kind;
    note.doneOn = day;
    notes.push_back(note);
    return notes.back();
  }
  words::TooEarlyWords words() const { return words::tooEarlyWords(plainVoice, drink, lots, planning::tooEarly(drink, lots, notes, "2026-06-30")); }
};

std::string all(const words::TooEarlyWords& words) {
  std::string text = words.headline;
  for (const auto* lines : {&words.lines, &words.bottles, &words.cautions})
    for (const std::string& line : *lines) text += "\n" + line;
  return text;
}

}  // namespace

TEST_CASE("whatever the notes say, a batch is never called ready and no bottle safe") {
  for (const int fall : {-30, 0, 30})
    for (const int days : {1, 5})
      for (const bool gushed : {false, true}) {
        Batch batch;
        batch.add(NoteKind::reading, "2026-05-01").gravity = 10100 + fall;
        batch.add(NoteKind::reading, "2026-05-0" + std::to_string(1 + days)).gravity = 10100;
        for (const NoteKind kind : {NoteKind::haze, NoteKind::sediment, NoteKind::sulphur}) batch.add(kind, "2026-05-02").level = 3;
        if (gushed) batch.add(NoteKind::gusher, "2026-06-01");
        const std::string text = all(batch.words());
        for (const char* word : {"ready", "safe", "at its best", "finished"}) CHECK(text.find(word) == std::string::npos);
        CHECK(text.find("ressure") != std::string::npos);
      }
}

TEST_CASE("a gusher comes first, and the batch's other bottles are named with their places") {
  Batch batch;
  Lot kitchen, cellar, gone;
  kitchen.name = "bottled in May";
  kitchen.bottles = 12;
  kitchen.storage = "kitchen cupboard";
  cellar.name = "kept cold";
  cellar.bottles = 1;
  gone.name = "first bottling";
  gone.storage = "attic";
  batch.lots = {kitchen, cellar, gone};
  batch.add(NoteKind::reading, "2026-05-01").gravity = 10100;
  CHECK(batch.words().bottles.empty());
  batch.add(NoteKind::gusher, "2026-06-01");
  const auto words = batch.words();
  CHECK(words.headline == "A bottle gushed. See to the others first.");
  REQUIRE(words.bottles.size() == 3);
  CHECK(words.bottles[0] == "bottled in May: 12 bottles, kitchen cupboard");
  CHECK(words.bottles[1] == "kept cold: 1 bottle, not said where");
  CHECK(words.bottles[2].find("given away") != std::string::npos);
  CHECK(words.cautions[0].find("gloves and goggles") != std::string::npos);
  // Nothing stands before where the others are and how to handle them.
  const auto body = words.body();
  REQUIRE(body.size() == 1 + words.bottles.size() + 1 + words.lines.size() - 1);
  CHECK(body[0] == words.lines[0]);
  CHECK(body[1] == words.bottles[0]);
  CHECK(body[4] == words.cautions[0]);
  CHECK(words.smallPrint() == std::vector(words.cautions.begin() + 1, words.cautions.end()));
}

TEST_CASE("a fall is told with its days, and never as one that goes on today") {
  Batch batch;
  batch.add(NoteKind::reading, "2026-05-01").gravity = 10200;
  batch.add(NoteKind::reading, "2026-05-03").gravity = 10120;
  CHECK(batch.words().headline == "Too early to bottle: it was still falling on 2026-05-03.");
  CHECK(batch.words().lines[0] == "1.020 on 2026-05-01, 1.012 on 2026-05-03: it fell within 2 days, so it still fermented then.");
  batch.notes[0].doneOn = "2026-04-23";
  CHECK(batch.words().headline == "Cannot be told yet. Read it again, on 2026-05-06 or later.");
  CHECK(batch.words().lines[0] == "1.020 on 2026-04-23, 1.012 on 2026-05-03: it fell in those 10 days. Whether it still does, only another reading says.");
}

TEST_CASE("what is watched is told with its direction") {
  Batch batch;
  batch.add(NoteKind::haze, "2026-05-02").level = 2;
  batch.add(NoteKind::haze, "2026-06-02").level = 0;
  batch.add(NoteKind::sulphur, "2026-06-02").level = 1;
  const std::string text = all(batch.words());
  CHECK(text.find("Haze: hazy on 2026-05-02, bright on 2026-06-02. It goes.") != std::string::npos);
  CHECK(text.find("Sulphur smell on 2026-06-02: faint.") != std::string::npos);
  CHECK(text.find("Cannot be told: no gravity was read.") != std::string::npos);
}
