pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// All that stands in the window: side column, banner, the page that the router names, and what is asked beside it.
Item {
    id: root

    objectName: "mainInside"

    required property App app
    property bool askedToClose: false

    signal closeRequested()
    signal stayRequested()

    NavColumn {
        id: nav

        app: root.app
        width: visible ? Math.min(Math.max(200, 232 * Theme.scale * 0.9), root.width * 0.32) : 0
        height: parent.height
        visible: !root.app.router.tasting
    }
    Banner {
        id: banner

        objectName: "banner"
        x: nav.width
        width: parent.width - x
        height: implicitHeight
        message: root.app.notice.message
        onDismissed: root.app.notice.dismiss()
    }
    AskBar {
        id: closing

        objectName: "closing"
        x: nav.width
        y: banner.height
        width: parent.width - x
        height: implicitHeight
        message: root.askedToClose && root.app.table.open ? qsTr("The table is open. What is locked is safe, and what was typed on a sheet is kept; a cup that was chosen and not locked is chosen again. Start the program again to go on where you are now.") : ""
        yes: qsTr("Close the window")
        no: qsTr("Keep it open")
        onYesRequested: root.closeRequested()
        onNoRequested: root.stayRequested()
    }
    Pages {
        app: root.app
        x: nav.width
        y: closing.y + closing.height
        width: parent.width - x
        height: parent.height - y - undo.height
    }
    AskBar {
        id: undo

        objectName: "undo"
        x: nav.width
        y: parent.height - height
        width: parent.width - x
        height: implicitHeight
        calm: true
        message: root.app.undo.line
        yes: root.app.undo.offered ? qsTr("Take it back") : ""
        no: qsTr("Leave it so")
        onYesRequested: root.app.undo.takeBack()
        onNoRequested: root.app.undo.dismiss()
    }
    Rectangle {
        objectName: "working"
        x: nav.width
        y: undo.y - height
        width: parent.width - x
        height: said.height + 16
        visible: root.app.working
        color: Theme.sheet

        HairLine {
            width: parent.width
        }
        Small {
            id: said

            x: 28
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - 56
            text: qsTr("Working it out. You can go on meanwhile.")
            Accessible.role: Accessible.AlertMessage
        }
    }
}
