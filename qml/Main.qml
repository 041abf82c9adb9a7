pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Oddglass.Ui

// The window. Its first frame is the paper alone, so that it stands at once; what is on it follows in the next one.
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
    Binding { target: Theme; property: "wetTarget"; value: Math.max(56, inside.Screen.pixelDensity * 14) }

    Shortcut { sequences: ["Ctrl++", "Ctrl+="]; onActivated: window.app.preferences.largerText() }
    Shortcut { sequences: ["Ctrl+-"]; onActivated: window.app.preferences.smallerText() }
    Shortcut { sequences: ["Alt+Left"]; onActivated: window.app.router.back() }
    Shortcut { sequences: ["Escape"]; onActivated: { window.askedToClose = false; window.app.notice.dismiss(); } }
    Shortcut { sequences: ["Ctrl+Q"]; onActivated: window.close() }

    Loader {
        id: inside

        anchors.fill: parent
    }
    Timer {
        id: drawn

        interval: 0
        onTriggered: inside.setSource("Inside.qml", {app: window.app})
    }
    Binding { target: inside.item; property: "askedToClose"; value: window.askedToClose; when: inside.status === Loader.Ready }
    Connections {
        target: inside.item
        ignoreUnknownSignals: true
        function onCloseRequested() {
            window.close();
        }
        function onStayRequested() {
            window.askedToClose = false;
        }
    }
    // Asked on another page, or of another table, it is another question.
    Connections {
        target: window.app.router
        function onPageChanged() {
            window.askedToClose = false;
        }
    }
    Connections {
        target: window.app.table
        function onChanged() {
            window.askedToClose = false;
        }
    }
    Connections {
        target: window
        enabled: inside.status === Loader.Null
        function onFrameSwapped() {
            drawn.start();
        }
    }
}
