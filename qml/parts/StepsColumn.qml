pragma ComponentBehavior: Bound
import QtQuick

// The steps of a plan: done, here, still to come.
Column {
    id: root

    required property list<string> steps
    required property int current
    // A step that was gone past and is still to be done; -1 for none.
    property int open: -1

    signal stepRequested(int index)

    Repeater {
        model: root.steps

        Item {
            id: step

            required property string modelData
            required property int index
            readonly property bool reachable: index <= root.current
            readonly property bool done: index < root.current && index !== root.open

            width: root.width
            height: link.height

            Rectangle {
                anchors.verticalCenter: parent.verticalCenter
                width: 11
                height: 11
                radius: 6
                color: step.done ? Theme.accent : "transparent"
                border.width: 2
                border.color: step.reachable ? Theme.accent : Theme.hair
            }
            NavLink {
                id: link

                objectName: "step" + step.index
                x: 24
                width: parent.width - 24
                text: step.modelData
                here: step.index === root.current
                enabled: step.reachable
                Accessible.description: step.done ? qsTr("done") : step.reachable && !link.here ? qsTr("still open") : ""
                onClicked: root.stepRequested(step.index)
            }
        }
    }
}
