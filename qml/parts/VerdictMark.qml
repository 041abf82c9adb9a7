import QtQuick

// The verdict as a shape: disc (shown), ring (not shown), bars (alike), dash (none). The word always stands beside it.
Item {
    id: root

    required property string shape
    property color tint: Theme.accent

    implicitWidth: 32
    implicitHeight: 32
    Accessible.ignored: true

    Rectangle {
        anchors.fill: parent
        visible: root.shape === "disc" || root.shape === "ring"
        radius: width / 2
        color: root.shape === "disc" ? root.tint : "transparent"
        border.width: 4
        border.color: root.tint
    }
    Rectangle {
        visible: root.shape === "bars"
        y: 5
        width: 32
        height: 7
        radius: 2
        color: root.tint
    }
    Rectangle {
        visible: root.shape === "bars"
        y: 20
        width: 32
        height: 7
        radius: 2
        color: root.tint
    }
    Rectangle {
        visible: root.shape === "dash"
        y: 13
        width: 32
        height: 6
        radius: 2
        color: root.tint
    }
}
