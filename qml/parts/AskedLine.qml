import QtQuick

// One question of a sheet in the list of them.
Column {
    id: root

    required property int index
    required property string says
    required property bool isFirst
    required property bool isLast

    signal moveRequested(int by)
    signal changeRequested()
    signal removeRequested()

    // Keeps the keyboard on the button that moved it, or on the other one where it cannot go further.
    function holdMover(by: int) {
        const mover = (by < 0 && !isFirst) || isLast ? up : down;
        mover.forceActiveFocus(Qt.TabFocusReason);
    }

    function holdRemover() {
        remover.forceActiveFocus(Qt.TabFocusReason);
    }

    Flow {
        width: root.width
        topPadding: 6
        bottomPadding: 6
        spacing: 12

        Body {
            width: Math.max(240 * Theme.scale, root.width - acts.width - 12)
            height: Math.max(implicitHeight, acts.height)
            verticalAlignment: Text.AlignVCenter
            text: root.says
        }
        Row {
            id: acts

            spacing: 8

            StepButton {
                id: up

                objectName: root.objectName + "Up"
                enabled: !root.isFirst
                opacity: enabled ? 1 : 0.3
                autoRepeat: false
                text: "\u2191"
                spoken: qsTr("Move up: %1").arg(root.says)
                onClicked: root.moveRequested(-1)
            }
            StepButton {
                id: down

                objectName: root.objectName + "Down"
                enabled: !root.isLast
                opacity: enabled ? 1 : 0.3
                autoRepeat: false
                text: "\u2193"
                spoken: qsTr("Move down: %1").arg(root.says)
                onClicked: root.moveRequested(1)
            }
            LinkButton {
                objectName: root.objectName + "Change"
                anchors.verticalCenter: parent.verticalCenter
                width: implicitWidth
                leftPadding: 6
                text: qsTr("Change")
                quiet: true
                Accessible.name: qsTr("Change: %1").arg(root.says)
                onClicked: root.changeRequested()
            }
            LinkButton {
                id: remover

                objectName: root.objectName + "Remove"
                anchors.verticalCenter: parent.verticalCenter
                width: implicitWidth
                text: qsTr("Remove")
                quiet: true
                Accessible.name: qsTr("Remove: %1").arg(root.says)
                onClicked: root.removeRequested()
            }
        }
    }
    HairLine {
        width: root.width
    }
}
