import QtQuick

// One sentence across the window with what can be done about it. Nothing is shown while there is no sentence.
Rectangle {
    id: root

    required property string message
    property string yes: ""
    property string no: ""
    property bool calm: false

    signal yesRequested()
    signal noRequested()

    visible: root.message !== ""
    implicitHeight: root.visible ? words.height + answers.height + 28 : 0
    color: Theme.sheet

    Rectangle {
        visible: !root.calm
        width: 6
        height: parent.height
        color: Theme.attention
    }
    Body {
        id: words

        objectName: root.objectName + "Text"
        x: 28
        y: 10
        width: parent.width - 56
        text: root.message
        Accessible.role: Accessible.AlertMessage
    }
    Flow {
        id: answers

        x: 28
        y: words.height + 14
        width: parent.width - 56
        spacing: 28

        LinkButton { objectName: root.objectName + "Yes"; visible: root.yes !== ""; text: root.yes; onClicked: root.yesRequested() }
        LinkButton { objectName: root.objectName + "No"; text: root.no; quiet: true; onClicked: root.noRequested() }
    }
    HairLine {
        y: root.calm ? 0 : parent.height - 1
        width: parent.width
    }
}
