#include "ui/rows.h"

#include <QMetaProperty>
#include <algorithm>

namespace oddglass::ui {

Rows::Rows(const QMetaObject& row, QObject* parent) : QAbstractListModel(parent), m_row(row) {}

int Rows::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant Rows::data(const QModelIndex& index, int role) const {
  const int property = role - Qt::UserRole;
  if (!index.isValid() || index.row() >= count() || property < 0 || property >= m_row.propertyCount()) return {};
  return m_row.property(property).readOnGadget(m_rows[static_cast<std::size_t>(index.row())].constData());
}

QHash<int, QByteArray> Rows::roleNames() const {
  QHash<int, QByteArray> names;
  for (int i = 0; i < m_row.propertyCount(); ++i) names.insert(Qt::UserRole + i, m_row.property(i).name());
  return names;
}

void Rows::replace(std::vector<QVariant> next) {
  const int before = count();
  const int after = static_cast<int>(next.size());
  if (after < before) {
    beginRemoveRows({}, after, before - 1);
    m_rows.resize(next.size());
    endRemoveRows();
  }
  const int kept = std::min(before, after);
  std::move(next.begin(), next.begin() + kept, m_rows.begin());
  if (kept > 0) emit dataChanged(index(0), index(kept - 1));
  if (after > before) {
    beginInsertRows({}, before, after - 1);
    m_rows.insert(m_rows.end(), std::make_move_iterator(next.begin() + kept), std::make_move_iterator(next.end()));
    endInsertRows();
  }
  if (after != before) emit countChanged();
}

}  // namespace oddglass::ui
