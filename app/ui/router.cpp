#include "ui/router.h"

#include <algorithm>
#include <array>

namespace oddglass::ui {
namespace {
constexpr std::array plan{Router::Page::Question, Router::Page::Takes, Router::Page::GiveAways, Router::Page::Care, Router::Page::Seal};
}

int Router::planStep() const {
  const auto* found = std::find(plan.begin(), plan.end(), m_page);
  return found == plan.end() ? -1 : static_cast<int>(found - plan.begin());
}

void Router::goToStep(int step) { go(plan.at(static_cast<std::size_t>(step))); }

bool Router::isTasting(Page page) {
  switch (page) {
    case Page::PourSheet:
    case Page::Alone:
    case Page::Places:
    case Page::HandOver:
    case Page::MyCups:
    case Page::MySheet:
    case Page::Locked:
    case Page::OpenKey:
    case Page::OpenRound:
    case Page::Card:
    case Page::Paper:
    case Page::TypeIn:
      return true;
    default:
      return false;
  }
}

void Router::go(Page page) {
  if (page == m_page) return;
  if (isTasting(page) || isTasting(m_page)) m_behind.clear();
  else m_behind.push_back(m_page);
  m_page = page;
  emit pageChanged();
}

void Router::back() {
  if (m_behind.empty()) return;
  m_page = m_behind.back();
  m_behind.pop_back();
  emit pageChanged();
}

}  // namespace oddglass::ui
