pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// The side column: where one can go, or, while a tasting is planned, its steps; below, the seal mark.
FocusScope {
    id: root

    required property App app
    readonly property Router router: app.router
    // After the seal there is no way back into the plan.
    readonly property bool planning: router.planStep >= 0 && app.draft.sealMark === ""

    Rectangle {
        anchors.fill: parent
        color: Theme.dark ? Theme.sheet : Theme.paper
    }
    Rectangle {
        x: parent.width - 1
        width: 1
        height: parent.height
        color: Theme.hair
    }
    Flickable {
        id: flick

        anchors.fill: parent
        anchors.bottomMargin: mark.visible ? mark.height + 40 : 0
        contentHeight: column.height + 60
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: column

            x: 28
            y: 30
            width: root.width - 44
            spacing: 16

            Text {
                text: qsTr("Oddglass")
                color: Theme.accent
                font.family: Theme.displayFamily
                font.pixelSize: Theme.title
                font.weight: Font.DemiBold
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
            StepsColumn {
                width: parent.width
                visible: root.planning
                steps: [qsTr("The question"), qsTr("What it takes"), qsTr("Give-aways"), qsTr("Care"), qsTr("The seal")]
                open: root.app.draft.giveAways.settled ? -1 : 2
                current: root.router.planStep
                onStepRequested: index => root.router.goToStep(index)
            }
            HairLine {
                visible: root.planning
                width: parent.width
            }
            Column {
                width: parent.width

                NavLink { objectName: "navToday"; width: parent.width; text: qsTr("Today"); here: root.router.page === Router.Today; onClicked: root.router.go(Router.Today) }
                NavLink { objectName: "navShelf"; width: parent.width; text: qsTr("Shelf"); here: root.router.page === Router.Shelf; onClicked: root.router.go(Router.Shelf) }
                NavLink { objectName: "navReferences"; width: parent.width; text: qsTr("Reference book"); here: root.router.page === Router.References; onClicked: root.router.go(Router.References) }
                NavLink { objectName: "navRoom"; width: parent.width; text: qsTr("You and the room"); here: root.router.page === Router.Room; onClicked: root.router.go(Router.Room) }
                NavLink {
                    objectName: "navOverTime"
                    width: parent.width
                    text: qsTr("Over time")
                    here: root.router.page === Router.OverTime || root.router.page === Router.BeginSeries
                    onClicked: root.router.go(Router.OverTime)
                }
                NavLink { objectName: "navSideBySide"; width: parent.width; text: qsTr("Side by side"); here: root.router.page === Router.SideBySide; onClicked: root.router.go(Router.SideBySide) }
                NavLink { objectName: "navPeople"; width: parent.width; text: qsTr("People"); here: root.router.page === Router.People; onClicked: root.router.go(Router.People) }
                NavLink {
                    objectName: "navWords"
                    width: parent.width
                    text: qsTr("Words")
                    here: root.router.page === Router.Words || root.router.page === Router.Word
                    onClicked: root.router.go(Router.Words)
                }
                NavLink { objectName: "navKeeping"; width: parent.width; text: qsTr("Keeping"); here: root.router.page === Router.Keeping; onClicked: root.router.go(Router.Keeping) }
            }
        }
    }
    Column {
        id: mark

        x: 28
        y: parent.height - height - 28
        width: root.width - 44
        visible: root.app.current.sealMark !== ""
        spacing: 2

        Small {
            text: qsTr("Seal mark")
        }
        Body {
            width: parent.width
            text: root.app.current.sealMark
            font.weight: Font.Medium
        }
    }
}
