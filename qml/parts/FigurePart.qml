pragma ComponentBehavior: Bound
import QtQuick

// A part of a page: its heading, what it came to, and its figure.
Column {
    id: root

    required property string heading
    required property string says
    required property var figure

    spacing: 10

    Body {
        width: root.width
        visible: text !== ""
        text: root.heading
        font.weight: Font.DemiBold
    }
    Body {
        width: root.width
        visible: text !== ""
        text: root.says
    }
    Figure {
        objectName: root.objectName + "Figure"
        width: root.width
        source: root.figure
    }
}
