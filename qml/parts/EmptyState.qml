import QtQuick

// What a page says when there is nothing on it yet.
Item {
    id: root

    required property string text

    implicitHeight: words.height + 48

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: "transparent"
        border.width: 1
        border.color: Theme.hair
    }
    Lead {
        id: words

        x: 24
        y: 24
        width: parent.width - 48
        text: root.text
    }
}
