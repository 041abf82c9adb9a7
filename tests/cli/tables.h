#pragma once

#include "cli/ran.h"

namespace oddglass::testing {

/// A command that reads a table, and a table that it takes. FILE follows the words.
struct TableCommand {
  std::string words;
  std::string text;
};

/// Scores of six tasters, three samples, two rounds and three sessions, with what every command of scores needs beside them. Made by rule.
inline std::string scoreTable() {
  const std::vector<std::string> samples{"ale", "bitter", "cider"};
  std::string text = "y,s,t,k,v,p,age,before,whole,condition\n";
  for (int session = 1; session <= 3; ++session)
    for (int round = 1; round <= 2; ++round)
      for (int taster = 1; taster <= 6; ++taster)
        for (int place = 1; place <= 3; ++place) {
          const std::size_t sample = static_cast<std::size_t>(place + taster + session) % 3;
          const int whole = 1 + (7 * taster + 3 * place + 5 * round + 2 * session) % 5;
          text += std::to_string(whole) + '.' + std::to_string((3 * taster + place + session) % 10) + ',' + samples[sample] + ",T" + std::to_string(taster) + ',' + std::to_string(round) + ",day " + std::to_string(session) + ',' +
                  std::to_string(place) + ',' + std::to_string(2 * session) + ',' + (place > 1 ? samples[(sample + 2) % 3] : "") + ',' + std::to_string(whole) + ',' + (round == 1 ? "blind" : "open") + '\n';
        }
  return text;
}

inline std::string trialTable() {
  std::string text = "t,right,prefers,sure,place,signal,said,p,came\n";
  for (int i = 0; i < 24; ++i)
    text += "T" + std::to_string(i % 6) + ',' + std::to_string(i * 7 % 3 != 0) + ',' + (i % 2 ? "first" : "second") + ',' + std::to_string(1 + i % 3) + ',' + std::to_string(1 + i * 5 % 3) + ',' + std::to_string(i % 2) + ',' +
            std::to_string(i * 3 % 5 % 2) + ",0." + std::to_string(1 + i % 9) + ',' + std::to_string(i % 3 == 0) + '\n';
  return text;
}

/// Every command that reads a table, most of them in more than one way.
inline const std::vector<TableCommand>& everyTable() {
  const std::string scores = scoreTable(), trials = trialTable(), columns = " --response y --sample s --taster t";
  const std::string ranks = "t,s,r\nT1,A,1\nT1,B,2\nT1,C,3\nT2,A,2\nT2,B,1\nT2,C,3\nT3,A,1\nT3,B,3\nT3,C,2\nT4,A,1\nT4,B,2.5\nT4,C,2.5\n";
  const std::string pairs = "l,r,w,t\nA,B,A,T1\nB,C,C,T1\nC,A,A,T1\nB,A,tie,T2\nB,C,B,T2\nA,C,C,T2\nA,B,B,T3\nC,B,B,T3\nC,A,,T3\n";
  std::string ticks = "t,s,d,c\n";
  for (int i = 0; i < 48; ++i) ticks += "T" + std::to_string(i % 8) + ',' + "ABC"[i / 8 % 3] + ',' + (i / 24 ? "sour" : "fruity") + ',' + std::to_string(i * 5 % 7 % 2) + '\n';
  static const std::vector<TableCommand> all{
      {"scores" + columns, scores}, {"scores --round k --session v --position p --reference ale" + columns, scores}, {"panel --round k" + columns, scores}, {"order --position p --previous before --session v --round k --beside whole" + columns, scores},
      {"ratings --response whole --sample s --taster t", scores}, {"ratings --response whole --sample s --taster t --session v --position p --points 5 --reference cider", scores},
      {"trend --response y --age age --taster t --session v", scores}, {"trend --response y --age age --taster t --session v --sample s --batch ale --control cider --limit 1", scores},
      {"right --response whole --liking y --sample s --taster t", scores}, {"checks --sample s --taster t --descriptor d --checked c", ticks},
      {"lean --session v --maker T1 --own ale --reference cider" + columns, scores}, {"label --session v --maker T1 --own ale --reference cider --condition condition" + columns, scores},
      {"alike --batch ale --reference cider --limit 1" + columns, scores}, {"ranks --rank r --sample s --taster t --expected A,B,C", ranks}, {"ranks --rank whole --sample v --taster k --best-first", scores},
      {"choices --left l --right r --winner w --taster t", pairs}, {"count --method triangle --taster t --correct right --prefers prefers --sure sure", trials}, {"count --method preference --taster t --prefers prefers", trials},
      {"count --method two-out-of-five --taster t --correct right --limit-pd 0.3", trials}, {"positions --method triangle --position place --correct right", trials}, {"signal --method same-different --signal signal --said said", trials},
      {"rindex --signal signal --said said --sure sure", trials}, {"rindex --signal signal --sure sure", trials}, {"expect --probability p --came-true came", trials}};
  return all;
}

}  // namespace oddglass::testing
