pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// People: who tastes, and how somebody is forgotten.
PageFrame {
    id: root

    required property PeopleModel model

    objectName: "peoplePage"
    headline: qsTr("People")
    lead: qsTr("A name is enough. Nobody's allergies, medicines or reasons are asked or kept.")
    primary: model.open ? qsTr("Keep it") : qsTr("Add a person")
    onPrimaryRequested: model.open ? model.save() : model.openNew()
    links: [
        LinkButton { objectName: "personLeave"; visible: root.model.open; text: qsTr("Leave it"); onClicked: root.model.leave() },
        LinkButton {
            objectName: "peopleArchived"
            visible: !root.model.open
            text: root.model.archivedShown ? qsTr("Hide who was put away") : qsTr("Show who was put away too")
            onClicked: root.model.archivedShown = !root.model.archivedShown
        }
    ]
    Component.onCompleted: model.load()

    EmptyState {
        width: parent.width
        visible: root.model.loaded && !root.model.open && root.model.people.count === 0
        text: qsTr("Nobody here. You can also taste alone.")
    }
    Body {
        width: parent.width
        visible: text !== ""
        text: root.model.erasedLine
    }
    Column {
        width: parent.width
        visible: !root.model.open

        Repeater {
            model: root.model.people

            RowLink {
                required property int index
                required property string name
                required property bool archived
                required line

                objectName: "person" + index
                width: root.columnWidth
                text: archived ? qsTr("%1 (put away)").arg(name) : name
                faded: archived
                onClicked: root.model.openPerson(index)
            }
        }
    }
    Column {
        width: parent.width
        visible: !root.model.open && root.model.noticed.length > 0
        spacing: 10

        ToldPart {
            width: parent.width
            heading: qsTr("What people here are known to notice")
            lines: root.model.noticed
        }
        Small { width: parent.width; text: root.model.noticingRule }
    }
    Column {
        width: parent.width
        visible: root.model.open
        spacing: 24

        Field {
            objectName: "personName"
            width: Math.min(parent.width, 420)
            label: qsTr("Name")
            text: root.model.name
            error: root.model.wrongField === "name" ? root.model.wrong : ""
            onTyped: text => root.model.name = text
            onAccepted: root.model.save()
        }
        Field {
            objectName: "personNickname"
            width: Math.min(parent.width, 420)
            label: qsTr("Nickname, for tastings in which they ask for one")
            text: root.model.nickname
            error: root.model.wrongField === "nickname" ? root.model.wrong : ""
            onTyped: text => root.model.nickname = text
        }
        CheckLine {
            objectName: "personBrewer"
            width: parent.width
            text: qsTr("This is the brewer, whose machine this is")
            more: root.model.wrongField === "is_brewer" ? root.model.wrong : ""
            ticked: root.model.isBrewer
            onTickRequested: ticked => root.model.isBrewer = ticked
        }
        ToldPart {
            width: parent.width
            visible: root.model.better.length > 0
            heading: qsTr("Am I getting better at it?")
            lines: root.model.better
        }
        Column {
            width: parent.width
            visible: root.model.known
            spacing: 8

            SectionTitle { width: parent.width; text: qsTr("A card") }
            Body { objectName: "cardLine"; width: parent.width; text: root.model.cardLine }
            LinkButton { objectName: "cardShow"; text: root.model.cardLink; onClicked: root.model.hasCard ? root.model.showCard() : root.model.askForCard() }
            LinkButton { objectName: "cardRead"; visible: root.model.cardLet; text: qsTr("Read it as they let it be seen"); quiet: true; onClicked: root.model.readCard() }
            LinkButton { objectName: "cardBack"; visible: root.model.hasCard; text: qsTr("They take the wish back"); quiet: true; onClicked: root.model.takeCardBack() }
            ToldPart {
                width: parent.width
                visible: root.model.cardLines.length > 0
                lines: root.model.cardLines
            }
        }
        LinkButton {
            objectName: "personArchive"
            visible: root.model.known
            text: root.model.archived ? qsTr("Bring them back") : qsTr("Put them away")
            onClicked: root.model.archive(!root.model.archived)
        }
        DangerQuestion {
            objectName: "eraseWords"
            width: parent.width
            visible: root.model.known
            link: qsTr("Forget their name and words")
            first: root.model.eraseWordsFirst
            second: root.model.eraseWordsSecond
            deed: qsTr("Forget name and words")
            onConfirmed: root.model.eraseWords()
        }
        DangerQuestion {
            objectName: "eraseEverything"
            width: parent.width
            visible: root.model.known
            link: qsTr("Forget everything of theirs")
            first: root.model.eraseAllFirst
            second: root.model.eraseAllSecond
            deed: qsTr("Forget everything")
            onConfirmed: root.model.eraseEverything()
        }
    }
}
