pragma ComponentBehavior: Bound
import QtQuick

// How the sums of a page are worked out, and after whom: one click away.
Column {
    id: root

    required property var lines
    property bool open: false

    visible: root.lines.length > 0
    spacing: 6

    LinkButton {
        objectName: root.objectName + "Link"
        quiet: true
        text: root.open ? qsTr("Hide how it is worked out") : qsTr("How it is worked out, and after whom")
        onClicked: root.open = !root.open
    }
    Repeater {
        model: root.open ? root.lines : []

        Small {
            required property string modelData

            width: root.width
            text: modelData
        }
    }
}
