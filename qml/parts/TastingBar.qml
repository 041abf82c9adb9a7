pragma ComponentBehavior: Bound
import QtQuick

// The foot of a tasting page: what leads away on the left, the one action on the right, and what it still waits for beside it, or above where that is
// too narrow.
Rectangle {
    id: root

    required property string text
    property string reason: ""
    property bool big: false
    property bool lined: false
    required property real side
    default property alias links: away.data
    readonly property real pad: big ? 20 : 12
    readonly property real room: go.x - 24 - away.x - (away.childrenRect.width > 0 ? away.childrenRect.width + 24 : 0)
    readonly property bool isBeside: room >= 220 * Theme.scale
    readonly property real awayWidth: away.width

    signal acted()

    height: Math.max(away.height, go.height) + 2 * pad + (why.visible && !isBeside ? why.height + 8 : 0)
    color: Theme.paper

    HairLine {
        width: parent.width
        visible: root.lined
    }
    Small {
        id: why

        objectName: "barReason"
        x: root.isBeside ? go.x - 24 - width : root.side
        y: root.isBeside ? go.y + (go.height - height) / 2 : root.pad
        width: root.isBeside ? Math.min(root.room, 480 * Theme.scale) : parent.width - 2 * root.side
        visible: text !== ""
        text: root.reason
        horizontalAlignment: Text.AlignRight
    }
    Flow {
        id: away

        x: root.side
        y: parent.height - height - root.pad
        width: parent.width - go.width - 2 * root.side - 24
        spacing: root.big ? 32 : 24
    }
    PrimaryButton {
        id: go

        objectName: "primary"
        x: parent.width - width - root.side
        y: parent.height - height - root.pad
        big: root.big
        tells: false
        text: root.text
        reason: root.reason
        onActed: root.acted()
    }
}
