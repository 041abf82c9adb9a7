#pragma once
#include <QObject>
#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>
#include <vector>

namespace oddglass::ui {

/// A list for a page. A row is a gadget; its properties are the roles, under their own names.
class Rows : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
  Rows(const QMetaObject& row, QObject* parent);
  int count() const { return static_cast<int>(m_rows.size()); }
  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  /// Puts these rows in place of the old ones. Delegates of rows that stay keep their focus.
  template <class Row>
  void set(const std::vector<Row>& rows) {
    std::vector<QVariant> next;
    next.reserve(rows.size());
    for (const Row& row : rows) next.push_back(QVariant::fromValue(row));
    replace(std::move(next));
  }
  /// The row at `at`; `at` must be in range.
  template <class Row>
  Row at(int at) const {
    return m_rows.at(static_cast<std::size_t>(at)).template value<Row>();
  }

signals:
  void countChanged();

private:
  void replace(std::vector<QVariant> next);
  const QMetaObject& m_row;
  std::vector<QVariant> m_rows;
};

}  // namespace oddglass::ui
