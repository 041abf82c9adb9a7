import QtQuick
import QtQuick.Controls.Basic

// One line of the vocabulary: a class that opens up, or, set in below it, a word that leads to its own page.
AbstractButton {
    id: root

    property bool isClass: false
    property bool isOpen: false
    property bool faded: false
    property string line: ""
    property string mark: ""
    // Words stand under the name of their class, whatever the size of the text.
    readonly property real inset: 20 + Theme.body

    implicitWidth: 400
    implicitHeight: Math.max(Theme.target, implicitContentHeight + (isClass ? 24 : 16))
    leftPadding: isClass ? 8 : inset
    rightPadding: 8
    // The words decide the height; what they are centred by must not come back into it.
    topPadding: Math.max(0, (height - implicitContentHeight) / 2)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: root.mark === "" ? root.text : qsTr("%1, %2").arg(root.text).arg(root.mark)
    Accessible.description: root.isClass ? (root.isOpen ? qsTr("open. %1").arg(root.line) : qsTr("closed. %1").arg(root.line)) : root.line
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    contentItem: Words {
        isClass: root.isClass
        isOpen: root.isOpen
        faded: root.faded
        text: root.text
        line: root.line
        mark: root.mark
        room: root.availableWidth
    }
    background: Rectangle {
        color: root.hovered ? Theme.soft : "transparent"
        radius: 4

        HairLine {
            x: root.isClass ? 0 : root.inset
            y: parent.height - 1
            width: parent.width - x
        }
        FocusRing {
            anchors.margins: -2
            shown: root.visualFocus
        }
    }

    // Ids inside an item that a control shows late would make it early: they stand in a component of their own.
    component Words: Row {
        id: words

        required property bool isClass
        required property bool isOpen
        required property bool faded
        required property string text
        required property string line
        required property string mark
        required property real room

        spacing: 12

        Body {
            id: sign

            width: Theme.body
            visible: words.isClass
            text: words.isOpen ? "\u2212" : "+"
            color: Theme.muted
            Accessible.ignored: true
        }
        Column {
            width: words.room - (sign.visible ? sign.width + 12 : 0) - (counted.visible ? counted.width + 12 : 0)
            spacing: 2

            Body {
                width: parent.width
                text: words.text
                color: words.faded ? Theme.muted : Theme.ink
                font.weight: words.isClass ? Font.DemiBold : Font.Medium
                Accessible.ignored: true
            }
            Small {
                width: parent.width
                visible: words.line !== ""
                text: words.line
                Accessible.ignored: true
            }
        }
        Small {
            id: counted

            visible: words.mark !== ""
            text: words.mark
            Accessible.ignored: true
        }
    }
}
