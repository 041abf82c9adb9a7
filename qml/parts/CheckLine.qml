import QtQuick
import QtQuick.Controls.Basic

// A sentence to agree to, or a thing to tick. The tick comes from outside; a tap only asks for it.
AbstractButton {
    id: root

    property bool ticked: false
    property string more: ""
    // Codes stand large and underlined, as on the cups.
    property bool isCode: false
    // One of several of which one is taken: its mark is round.
    property bool oneOfSeveral: false

    readonly property real boxSide: Theme.tasting ? 36 : 24
    readonly property real firstLine: (isCode ? Theme.title * 1.2 : Theme.body) * 1.5

    signal tickRequested(bool ticked)

    implicitWidth: 400
    implicitHeight: Math.max(Theme.target, implicitContentHeight + 12)
    // The words decide the height; what they are centred by must not come back into it.
    topPadding: Math.max(0, (height - implicitContentHeight) / 2)
    focusPolicy: Qt.StrongFocus
    Accessible.role: oneOfSeveral ? Accessible.RadioButton : Accessible.CheckBox
    Accessible.name: text
    Accessible.description: more
    Accessible.checkable: true
    Accessible.checked: ticked
    Keys.onReturnPressed: root.clicked()
    onClicked: tickRequested(!ticked)

    contentItem: Row {
        spacing: 14

        Rectangle {
            y: Math.max(0, (root.firstLine - root.boxSide) / 2)
            width: root.boxSide
            height: width
            radius: root.oneOfSeveral ? width / 2 : 5
            color: root.ticked ? Theme.accent : Theme.sheet
            border.width: root.ticked ? 0 : 2
            border.color: Theme.line

            Text {
                anchors.centerIn: parent
                visible: root.ticked && !root.oneOfSeveral
                text: "\u2713"
                color: Theme.accentText
                font.family: Theme.textFamily
                font.pixelSize: parent.height * 0.75
                font.weight: Font.Bold
            }
            Rectangle {
                anchors.centerIn: parent
                visible: root.ticked && root.oneOfSeveral
                width: parent.width * 0.4
                height: width
                radius: width / 2
                color: Theme.accentText
            }
        }
        Column {
            y: Math.max(0, (root.boxSide - root.firstLine) / 2)
            width: root.availableWidth - root.boxSide - 14

            Body {
                width: parent.width
                text: root.text
                font.pixelSize: root.isCode ? Theme.title * 1.2 : Theme.body
                font.weight: root.isCode ? Font.DemiBold : Font.Normal
                font.underline: root.isCode
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
