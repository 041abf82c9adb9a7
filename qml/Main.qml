pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Oddglass.Ui

// The window: side column, banner, and the page that the router names.
ApplicationWindow {
    id: window

    required property App app

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
        Pages {
            app: window.app
            x: nav.width
            y: banner.height
            width: parent.width - x
            height: parent.height - y
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
