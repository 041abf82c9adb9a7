import QtQuick

// One place on the board: its number, who sits there, what they are doing.
Item {
    id: root

    required property int number
    required property string place
    required property string who
    required property string step
    required property string shape
    required property string rounds
    required property string hand
    // The wave that begins here; empty for all other places.
    required property string section
    readonly property real above: section === "" ? 0 : wave.height + 24

    signal handRequested()

    implicitHeight: above + Math.max(Theme.target + 8, words.height + 20)
    Accessible.role: Accessible.ListItem
    Accessible.name: qsTr("%1, %2, %3").arg(place).arg(step).arg(who)

    Small {
        id: wave

        y: 18
        width: parent.width
        visible: root.section !== ""
        text: root.section
    }
    VerdictMark {
        y: root.above + (parent.height - root.above - 20) / 2
        width: 32
        height: 32
        scale: 20 / 32
        transformOrigin: Item.TopLeft
        shape: root.shape
        tint: Theme.ink
    }
    Column {
        id: words

        x: 40
        y: root.above + (parent.height - root.above - height) / 2
        width: parent.width - x - hand.width - 16

        Flow {
            width: parent.width
            spacing: 18

            Body { text: root.place; font.weight: Font.DemiBold; font.pixelSize: Theme.body * 1.125; Accessible.ignored: true }
            Body { text: root.who; font.pixelSize: Theme.body * 1.125; visible: text !== ""; Accessible.ignored: true }
            Body { text: root.step; color: Theme.muted; font.pixelSize: Theme.body * 1.125; Accessible.ignored: true }
            Body { text: root.rounds; color: Theme.muted; font.pixelSize: Theme.body * 1.125; visible: text !== ""; Accessible.ignored: true }
        }
    }
    LinkButton {
        id: hand

        objectName: "hand" + root.number
        x: parent.width - width
        y: root.above + (parent.height - root.above - height) / 2
        visible: text !== ""
        text: root.hand
        Accessible.name: qsTr("%1: %2").arg(root.place).arg(root.hand)
        onClicked: root.handRequested()
    }
    HairLine {
        y: parent.height - 1
        width: parent.width
    }
}
