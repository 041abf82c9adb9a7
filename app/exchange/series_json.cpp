#include "exchange/series_json.h"

#include "exchange/each_record.h"
#include "shelf/series.h"

namespace oddglass::exchange {
namespace {

using canon::Json;

struct SeriesInFile : Series {
  std::vector<shelf::SeriesSeen> seen;
};

Json seriesJson(const Series& series, const std::vector<shelf::SeriesSeen>& seen) {
  Json sittings = Json::array(), opened = Json::array();
  for (const Sitting& each : series.sittings) sittings.push_back({{"due_on", each.dueOn}, {"session", each.session ? Json(each.session->text) : Json()}});
  for (const shelf::SeriesSeen& each : seen) opened.push_back({{"session", each.session.text}, {"at", each.at}});
  return {{"id", series.id.text},
          {"title", series.title},
          {"batch", series.batch.text},
          {"control", nameOf(series.control)},
          {"control_lot", series.controlLot ? Json(series.controlLot->text) : Json()},
          {"begun_on", series.begunOn},
          {"bottles_each", series.bottlesEach},
          {"reserve", series.reserve},
          {"main", {{"sitting", series.main.sitting}, {"word", series.main.word}, {"limit", series.main.limit ? Json(*series.main.limit) : Json()}}},
          {"sittings", sittings},
          {"seen_while_sealed", opened},
          {"archived", series.archived}};
}

MainComparison mainFrom(const Node& node) {
  node.onlyKeys({"sitting", "word", "limit"});
  MainComparison main;
  main.sitting = node.at("sitting").small(2, 24);
  if (const auto word = node.maybe("word")) main.word = word->text(60);
  if (const auto limit = node.maybe("limit")) main.limit = limit->small(1, 1000);
  return main;
}

SeriesInFile seriesFrom(const Node& node) {
  node.onlyKeys({"id", "title", "batch", "control", "control_lot", "begun_on", "bottles_each", "reserve", "main", "sittings", "seen_while_sealed", "archived"});
  SeriesInFile series;
  series.id = node.at("id").uid<struct SeriesTag>();
  series.title = node.at("title").text(200, false);
  series.batch = node.at("batch").uid<struct LotTag>();
  series.control = node.at("control").choice<ControlKind>();
  if (const auto lot = node.maybe("control_lot")) series.controlLot = lot->uid<struct LotTag>();
  series.begunOn = node.at("begun_on").day(false);
  series.bottlesEach = node.at("bottles_each").small(1, 24);
  series.reserve = node.at("reserve").small(0, 48);
  series.main = mainFrom(node.at("main"));
  for (const Node& each : node.at("sittings").list()) {
    each.onlyKeys({"due_on", "session"});
    Sitting sitting;
    sitting.dueOn = each.at("due_on").day(false);
    if (const auto session = each.maybe("session")) sitting.session = session->uid<struct SessionTag>();
    series.sittings.push_back(std::move(sitting));
  }
  for (const Node& each : node.maybeList("seen_while_sealed")) {
    each.onlyKeys({"session", "at"});
    series.seen.push_back({each.at("session").uid<struct SessionTag>(), each.at("at").whole(0, 1LL << 52)});
  }
  if (const auto archived = node.maybe("archived")) series.archived = archived->truth();
  return series;
}

}  // namespace

void writeSeries(store::Store& store, Json& file) {
  file["series"] = Json::array();
  for (const Series& series : shelf::allSeries(store, true)) file["series"].push_back(seriesJson(series, shelf::seenOf(store, series.id)));
}

void bringSeries(store::Store& store, Clock& clock, const Node& file, Brought& brought) {
  eachRecord(file, "series", seriesFrom, [&](const SeriesInFile& series) { ++(shelf::bring(store, clock, series, series.seen) ? brought.series : brought.alreadyThere); });
}

void requireSeries(const Node& file) { eachRecord(file, "series", seriesFrom, [](const SeriesInFile&) {}); }

}  // namespace oddglass::exchange
