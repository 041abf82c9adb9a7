import QtQuick

// A form or a question that opens within a page.
Rectangle {
    id: root

    default property alias content: column.data
    property alias spacing: column.spacing
    property bool alarming: false

    implicitWidth: 400
    implicitHeight: column.height + 48
    radius: 12
    color: Theme.sheet
    border.width: alarming ? 2 : 1
    border.color: alarming ? Theme.attention : Theme.hair

    Column {
        id: column

        x: 24
        y: 24
        width: parent.width - 48
        spacing: 20
    }
}
