import QtQuick

// A label with what it says below: the columns of small facts under a verdict.
Column {
    id: root

    required property string label
    required property string says

    spacing: 4
    visible: says !== ""

    Small {
        width: root.width
        visible: root.label !== ""
        text: root.label
    }
    Body {
        width: root.width
        text: root.says
    }
}
