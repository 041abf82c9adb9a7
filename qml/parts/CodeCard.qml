pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic

// One cup before a taster: its code, huge and underlined, and where it stands.
AbstractButton {
    id: root

    required property string code
    required property string spokenCode
    required property string position
    property bool chosen: false
    property bool acts: true
    property string mark: qsTr("this one")
    // The cup to compare with: known to everybody, never chosen.
    property bool marked: false

    readonly property real codeSize: size.font.pixelSize

    implicitWidth: 288
    implicitHeight: Theme.code * 1.25 + Theme.body * 6.5
    enabled: acts
    focusPolicy: acts ? Qt.StrongFocus : Qt.NoFocus
    Accessible.role: acts ? Accessible.RadioButton : Accessible.StaticText
    Accessible.name: qsTr("%1, %2").arg(position).arg(spokenCode)
    Accessible.checkable: acts
    Accessible.checked: chosen
    Keys.onReturnPressed: root.clicked()

    Item {
        anchors.fill: parent

        Text {
            id: place

            anchors.horizontalCenter: parent.horizontalCenter
            y: 14
            text: root.position
            color: Theme.muted
            font.family: Theme.textFamily
            font.pixelSize: Theme.body * 1.0625
        }
        // Below where it stands, and above the words of a cup that is chosen or marked.
        Column {
            readonly property real above: place.y + place.height
            readonly property real below: root.acts || root.marked ? told.height + 20 : 8

            anchors.horizontalCenter: parent.horizontalCenter
            y: above + (parent.height - above - below - height) / 2
            spacing: 6

            Row {
                anchors.horizontalCenter: parent.horizontalCenter

                Repeater {
                    model: root.code.length

                    Text {
                        required property int index

                        width: size.advance
                        text: root.code.charAt(index)
                        color: Theme.ink
                        font: size.font
                        horizontalAlignment: Text.AlignHCenter
                    }
                }
            }
            Rectangle {
                anchors.horizontalCenter: parent.horizontalCenter
                width: size.advance * root.code.length
                height: 4
                radius: 2
                color: Theme.ink
            }
        }
        Text {
            id: told

            anchors.horizontalCenter: parent.horizontalCenter
            y: parent.height - height - 16
            visible: root.chosen || root.marked
            text: root.marked ? qsTr("compare with this") : root.mark
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.body * 1.125
            font.weight: Font.DemiBold
        }
    }
    background: Rectangle {
        radius: Theme.wideRadius
        color: root.marked ? "transparent" : Theme.sheet
        border.width: root.chosen ? 5 : 1
        border.color: root.chosen ? Theme.ink : root.marked ? Theme.line : Theme.hair

        FocusRing {
            corner: Theme.wideRadius
            shown: root.visualFocus
        }
    }

    FontMetrics {
        id: size

        readonly property real advance: Math.ceil(advanceWidth("0"))

        font.family: Theme.displayFamily
        font.pixelSize: Math.min(Theme.code, root.width / 3)
        font.weight: Font.Medium
    }
}
