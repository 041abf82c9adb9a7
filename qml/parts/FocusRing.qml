import QtQuick

// The visible ring around whatever has the keyboard.
Rectangle {
    property bool shown: false
    property real corner: Theme.radius

    anchors.fill: parent
    anchors.margins: -5
    radius: corner + 5
    color: "transparent"
    border.width: Theme.ring
    border.color: Theme.ink
    visible: shown
}
