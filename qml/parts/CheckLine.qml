import QtQuick
import QtQuick.Controls.Basic

// A sentence to agree to, or a thing to tick. The tick comes from outside; a tap only asks for it.
AbstractButton {
    id: root

    property bool ticked: false
    property string more: ""

    signal tickRequested(bool ticked)

    implicitWidth: 400
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 12)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.CheckBox
    Accessible.name: text
    Accessible.description: more
    Accessible.checkable: true
    Accessible.checked: ticked
    Keys.onReturnPressed: click()
    onClicked: tickRequested(!ticked)

    contentItem: Item {
        Rectangle {
            id: box

            anchors.verticalCenter: parent.verticalCenter
            width: Theme.tasting ? 36 : 24
            height: width
            radius: 5
            color: root.ticked ? Theme.accent : Theme.sheet
            border.width: root.ticked ? 0 : 2
            border.color: Theme.line

            Text {
                anchors.centerIn: parent
                visible: root.ticked
                text: "\u2713"
                color: Theme.accentText
                font.family: Theme.textFamily
                font.pixelSize: parent.height * 0.75
                font.weight: Font.Bold
            }
        }
        Column {
            id: words

            anchors.verticalCenter: parent.verticalCenter
            x: box.width + 14
            width: parent.width - x

            Body {
                width: parent.width
                text: root.text
                Accessible.ignored: true
            }
            Small {
                width: parent.width
                visible: root.more !== ""
                text: root.more
                Accessible.ignored: true
            }
        }
    }
    background: Item {
        FocusRing {
            anchors.margins: -2
            shown: root.visualFocus
        }
    }
}
