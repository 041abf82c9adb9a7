import QtQuick

// Where everything that went wrong is said: what happened, what is kept, what to do.
Rectangle {
    id: root

    required property string message

    signal dismissed()

    visible: message !== ""
    implicitHeight: visible ? Math.max(words.height, away.height) + 24 : 0
    color: Theme.sheet

    Rectangle {
        width: 6
        height: parent.height
        color: Theme.attention
    }
    Body {
        id: words

        objectName: "bannerText"
        x: 28
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width - away.width - 72
        text: root.message
        Accessible.role: Accessible.AlertMessage
    }
    LinkButton {
        id: away

        objectName: "bannerAway"
        anchors.verticalCenter: parent.verticalCenter
        x: parent.width - width - 24
        text: qsTr("Understood")
        onClicked: root.dismissed()
    }
    HairLine {
        y: parent.height - 1
        width: parent.width
    }
}
