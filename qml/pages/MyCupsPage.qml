pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Oddglass.Ui

// My cups: are these mine, what is asked of them, how sure, how did you know; locking in another corner.
FocusScope {
    id: root

    required property CupsModel model
    readonly property real side: Math.max(24, Math.min(56, width / 22))

    objectName: "myCupsPage"

    Shortcut { sequences: ["1"]; enabled: root.model.confirmed && !comment.input.activeFocus; onActivated: root.model.choose(0) }
    Shortcut { sequences: ["2"]; enabled: root.model.confirmed && !comment.input.activeFocus; onActivated: root.model.choose(1) }
    Shortcut { sequences: ["3"]; enabled: root.model.confirmed && !comment.input.activeFocus; onActivated: root.model.choose(2) }
    Shortcut { sequences: ["4"]; enabled: root.model.confirmed && !comment.input.activeFocus; onActivated: root.model.choose(3) }
    Shortcut { sequences: ["5"]; enabled: root.model.confirmed && !comment.input.activeFocus; onActivated: root.model.choose(4) }

    Flickable {
        id: flick

        anchors.fill: parent
        anchors.bottomMargin: bar.height
        contentHeight: Math.max(height, column.height + 36)
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        ScrollBar.vertical: ScrollBar {
            policy: flick.contentHeight > flick.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
        }

        Column {
            id: column

            x: root.side
            y: 20
            width: flick.width - 2 * root.side
            spacing: 20

            Item {
                width: parent.width
                height: Math.max(place.height, seal.height)

                Lead {
                    id: place

                    objectName: "placeLine"
                    width: parent.width / 2
                    text: root.model.placeLine
                }
                Lead {
                    id: seal

                    x: parent.width - width
                    width: parent.width / 2
                    text: root.model.sealMark
                    horizontalAlignment: Text.AlignRight
                    font.pixelSize: Theme.body
                }
            }
            Column {
                width: parent.width
                spacing: 6

                Headline {
                    objectName: "headline"
                    width: parent.width
                    text: root.model.confirmed ? root.model.question : qsTr("Are these your cups?")
                    font.pixelSize: Theme.headline * 0.9
                    horizontalAlignment: Text.AlignHCenter
                }
                Lead {
                    width: parent.width
                    text: root.model.confirmed ? root.model.hint : root.model.confirmSentence
                    font.pixelSize: Theme.body * 1.125
                    horizontalAlignment: Text.AlignHCenter
                }
            }
            Row {
                id: row

                anchors.horizontalCenter: parent.horizontalCenter
                spacing: Math.min(40, root.width / 32)

                Repeater {
                    model: root.model.cups

                    CodeCard {
                        required property int index
                        required property string spoken
                        required code
                        required position
                        required chosen
                        required marked

                        objectName: "cup" + index
                        width: Math.min(288, (column.width - (root.model.cupCount - 1) * row.spacing) / Math.max(2, root.model.cupCount))
                        spokenCode: spoken
                        acts: root.model.confirmed && root.model.choosesCups && !marked
                        onClicked: root.model.choose(index)
                    }
                }
            }
            ChoiceRow {
                objectName: "same"
                width: parent.width
                visible: root.model.confirmed && root.model.sameWords.length > 0
                centred: true
                options: root.model.sameWords
                current: root.model.same
                onChosen: index => root.model.say(index)
            }
            ChoiceRow {
                objectName: "liking"
                width: parent.width
                visible: root.model.confirmed && root.model.likings.length > 0
                centred: true
                label: root.model.likingLabel
                options: root.model.likings
                current: root.model.liking
                onChosen: index => root.model.like(index)
            }
            ChoiceRow {
                objectName: "sureness"
                width: parent.width
                visible: root.model.confirmed && root.model.asksSureness
                centred: true
                label: qsTr("How sure?")
                options: [qsTr("sure"), qsTr("fairly sure"), qsTr("a guess")]
                current: root.model.sureness
                onChosen: index => root.model.sureness = index
            }
            ChoiceRow {
                objectName: "clue"
                width: parent.width
                visible: root.model.confirmed && root.model.asksClue
                centred: true
                label: qsTr("How did you know?")
                options: [qsTr("taste"), qsTr("smell"), qsTr("mouthfeel"), qsTr("look"), qsTr("fizz"), qsTr("I guessed")]
                current: root.model.clue
                onChosen: index => root.model.clue = index
            }
            Field {
                id: comment

                objectName: "comment"
                anchors.horizontalCenter: parent.horizontalCenter
                width: Math.min(parent.width, 640)
                visible: root.model.confirmed && root.model.asksWords
                label: qsTr("What was different, if you like")
                text: root.model.comment
                onTyped: text => root.model.comment = text
            }
            Body {
                objectName: "notMineText"
                width: parent.width
                visible: text !== ""
                text: root.model.notMine
                horizontalAlignment: Text.AlignHCenter
                font.weight: Font.DemiBold
                Accessible.role: Accessible.AlertMessage
            }
        }
    }
    KeepInSight {
        flick: flick
        column: column
    }
    TastingBar {
        id: bar

        y: parent.height - height
        width: parent.width
        side: root.side
        big: root.height >= 700 * Theme.scale
        lined: flick.contentHeight > flick.height
        text: root.model.confirmed ? root.model.lockWords : qsTr("Yes, these are mine")
        reason: root.model.confirmed ? root.model.lockReason : ""
        onActed: root.model.confirmed ? root.model.lock() : root.model.confirm()

        DangerQuestion {
            objectName: "stop"
            width: step > 0 ? Math.min(bar.awayWidth, 480) : implicitWidth
            link: qsTr("Stop here")
            first: qsTr("What you have locked stays. The rest is counted as missing; nobody asks why. Stop?")
            second: qsTr("You cannot sit down again in this tasting. Stop all the same?")
            deed: qsTr("I stop here")
            onConfirmed: root.model.stop()
        }
        LinkButton {
            objectName: "notMine"
            text: qsTr("These are not my cups")
            onClicked: root.model.sayNotMine()
        }
    }
}
