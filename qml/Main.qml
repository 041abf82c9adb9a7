pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Oddglass.Ui

// The window: side column, banner, and the page that the router names.
ApplicationWindow {
    id: window

    required property App app
    // Closing is asked about once; whoever closes again means it.
    property bool askedToClose: false

    width: 1280
    height: 800
    minimumWidth: 760
    minimumHeight: 560
    visible: true
    title: qsTr("Oddglass")
    color: Theme.paper
    palette.window: Theme.paper
    palette.windowText: Theme.ink
    palette.base: Theme.sheet
    palette.text: Theme.ink
    palette.button: Theme.sheet
    palette.buttonText: Theme.ink
    palette.highlight: Theme.accent
    palette.highlightedText: Theme.accentText
    palette.mid: Theme.line
    font.family: Theme.textFamily
    font.pixelSize: Theme.body

    onClosing: close => {
        if (!window.app.table.open || window.askedToClose)
            return;
        close.accepted = false;
        window.askedToClose = true;
    }

    Binding { target: Theme; property: "dark"; value: window.app.preferences.dark }
    Binding { target: Theme; property: "scale"; value: window.app.preferences.textScale }
    Binding { target: Theme; property: "tasting"; value: window.app.router.tasting }
    Binding { target: Theme; property: "wetTarget"; value: Math.max(56, content.Screen.pixelDensity * 14) }

    Shortcut { sequences: ["Ctrl++", "Ctrl+="]; onActivated: window.app.preferences.largerText() }
    Shortcut { sequences: ["Ctrl+-"]; onActivated: window.app.preferences.smallerText() }
    Shortcut { sequences: ["Alt+Left"]; onActivated: window.app.router.back() }
    Shortcut { sequences: ["Escape"]; onActivated: window.app.notice.dismiss() }
    Shortcut { sequences: ["Ctrl+Q"]; onActivated: window.close() }

    Item {
        id: content

        anchors.fill: parent

        NavColumn {
            id: nav

            app: window.app
            width: visible ? Math.min(Math.max(200, 232 * Theme.scale * 0.9), content.width * 0.32) : 0
            height: parent.height
            visible: !window.app.router.tasting
        }
        Banner {
            id: banner

            objectName: "banner"
            x: nav.width
            width: parent.width - x
            height: implicitHeight
            message: window.app.notice.message
            onDismissed: window.app.notice.dismiss()
        }
        AskBar {
            id: closing

            objectName: "closing"
            x: nav.width
            y: banner.height
            width: parent.width - x
            height: implicitHeight
            message: window.askedToClose && window.app.table.open ? qsTr("The table is open. What is locked is safe, and what was typed on a sheet is kept; a cup that was chosen and not locked is chosen again. Start the program again to go on where you are now.") : ""
            yes: qsTr("Close the window")
            no: qsTr("Keep it open")
            onYesRequested: window.close()
            onNoRequested: window.askedToClose = false
        }
        Pages {
            app: window.app
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
            message: window.app.undo.line
            yes: window.app.undo.offered ? qsTr("Take it back") : ""
            no: qsTr("Leave it so")
            onYesRequested: window.app.undo.takeBack()
            onNoRequested: window.app.undo.dismiss()
        }
        Rectangle {
            objectName: "working"
            x: nav.width
            y: parent.height - height
            width: parent.width - x
            height: said.height + 16
            visible: window.app.working
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
}
