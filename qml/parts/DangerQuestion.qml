pragma ComponentBehavior: Bound
import QtQuick

// Something that cannot be undone: a link, then two questions in words, then the deed.
Column {
    id: root

    required property string link
    required property string first
    required property string second
    required property string deed
    property int step: 0

    signal confirmed()

    spacing: 12

    LinkButton {
        objectName: root.objectName + "Open"
        visible: root.step === 0
        text: root.link
        danger: true
        onClicked: root.step = 1
    }
    Rectangle {
        visible: root.step > 0
        width: root.width
        height: asked.height + 40
        radius: Theme.radius
        color: Theme.sheet
        border.color: Theme.attention
        border.width: 2

        Column {
            id: asked

            x: 20
            y: 20
            width: parent.width - 40
            spacing: 12

            Body {
                width: parent.width
                text: root.step === 2 ? root.second : root.first
                Accessible.role: Accessible.AlertMessage
            }
            Flow {
                width: parent.width
                spacing: 24

                LinkButton {
                    objectName: root.objectName + "Keep"
                    text: qsTr("No, leave it as it is")
                    onClicked: root.step = 0
                }
                LinkButton {
                    objectName: root.objectName + (root.step === 2 ? "Deed" : "Next")
                    text: root.step === 2 ? root.deed : qsTr("Yes, go on")
                    danger: true
                    onClicked: {
                        if (root.step === 1) {
                            root.step = 2;
                        } else {
                            root.step = 0;
                            root.confirmed();
                        }
                    }
                }
            }
        }
    }
}
