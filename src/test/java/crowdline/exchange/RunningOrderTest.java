package crowdline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.arrange.ShowArranging;
import crowdline.edit.Change;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.FirstDraft;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Pace;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunningOrderTest {
    private static final Path PASTED = Path.of("pasted cells");
    private static final String ORGANISERS = """
        SUMMER FAIR 2027;;;;;
        ;;;;;
        No;Time (local);Duration;Display;Pilot;Type of aircraft
        1;13.00;8 mins;Opening jump;;Parachute team
        2;13:10 - 13:22;;Blue darts;;4 x training jets
        ;;;LUNCH;;
        3;2 pm;0:12;Old thunder;M. Quarrel;wartime fighter
        4;1420;=C4;Sums;;
        5;;90 s;"Big hover; slow";The Tern Team;helicopter
        6;15:00;10;old THUNDER;;x
        7;15:00;10;old THUNDER;;x
        """;

    private final Catalogue catalogue = CatalogueFile.shipped();
    private final AddAct adding = new AddAct(catalogue, new FirstDraft(catalogue, Pace.DEFAULT, 0));

    private static Show empty() {
        return ShowArranging.empty("Fair", LocalDate.of(2027, 6, 12), ZoneOffset.UTC, null);
    }

    private static RunningOrder.Reading read(String text, Show show) throws ShowFileException {
        return RunningOrder.read(PASTED, text, show, KindsFile.shipped());
    }

    private Show taken(String text, Show show) throws ShowFileException, CannotBe {
        return RunningOrder.take(read(text, show), adding).of(show).show();
    }

    private static ActRow titled(RunningOrder.Reading reading, String title) {
        return reading.rows().stream()
                .filter(r -> r.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void organisersTableIsReadBelowItsTitle() throws ShowFileException {
        RunningOrder.Reading reading = read(ORGANISERS, empty());
        assertThat(reading.rows()).hasSize(8);
        assertThat(reading.taken()).isEqualTo(5);
        ActRow jump = titled(reading, "Opening jump");
        assertThat(jump.start()).isEqualTo(LocalTime.of(13, 0));
        assertThat(jump.minutes()).isEqualTo(8);
        assertThat(jump.kind().kind().name()).isEqualTo("parachutists");
        assertThat(jump.line()).isEqualTo(4);
        ActRow jets = titled(reading, "Blue darts");
        assertThat(jets.minutes()).as("from the range").isEqualTo(12);
        assertThat(jets.aircraft()).isEqualTo("4 x training jets");
        ActRow hover = titled(reading, "Big hover; slow");
        assertThat(hover.start()).as("when the one before is over").isEqualTo(LocalTime.of(14, 12));
        assertThat(hover.said()).singleElement().asString().contains("No start is given: 14:12");
    }

    @Test
    void rowsThatCannotBeTakenSayWhy() throws ShowFileException {
        RunningOrder.Reading reading = read(ORGANISERS, empty());
        assertThat(titled(reading, "LUNCH").said())
                .containsExactly("A break is the time between two slots; it is passed over");
        assertThat(titled(reading, "Sums").said())
                .containsExactly("“=C4” is a formula; copy its value, then take the row");
        assertThat(titled(reading, "old THUNDER (2)").said())
                .contains("“old THUNDER” is in a row above as well; this one is called “old THUNDER (2)”");
        assertThat(titled(reading, "old THUNDER (3)").said())
                .containsExactly(
                        "“old THUNDER (3)” is in a row above as well, at the same time; leave one of them out");
    }

    @Test
    void allRowsAreOneChangeWithAName() throws ShowFileException, CannotBe {
        Show before = empty();
        List<Integer> told = new ArrayList<>();
        Change change =
                RunningOrder.take(read(ORGANISERS, before), adding, told::add).of(before);
        assertThat(told).containsExactly(1, 2, 3, 4, 5);
        assertThat(change.name()).isEqualTo("Take 5 acts from cells");
        Show show = change.show();
        assertThat(show.acts())
                .extracting(Act::title)
                .containsExactly("Opening jump", "Blue darts", "Old thunder", "Big hover; slow", "old THUNDER (2)");
        Act thunder = show.acts().get(2);
        assertThat(thunder.slotMinutes()).isEqualTo(12);
        assertThat(show.performer(thunder.performer()).orElseThrow().name()).isEqualTo("M. Quarrel");
        Aircraft fighter = show.aircraft(thunder.airframe()).orElseThrow();
        assertThat(fighter).isInstanceOf(Airframe.class);
        assertThat(fighter.name()).isEqualTo("wartime fighter");
        assertThat(show.aircraft(show.acts().get(0).airframe()).orElseThrow()).isInstanceOf(TimedAircraft.class);
    }

    @Test
    void copiedCellsNeedNoHeads() throws ShowFileException {
        RunningOrder.Reading reading = read(
                "1\t14:00\tOwls of the marsh\tformation of 4\t12\n2\t14:15\tHeron\tglider\t8\n3\t14:30\tThe last jump\tskydivers\t10\n",
                empty());
        assertThat(reading.rows())
                .extracting(ActRow::title)
                .containsExactly("Owls of the marsh", "Heron", "The last jump");
        assertThat(reading.rows()).extracting(ActRow::minutes).containsExactly(12.0, 8.0, 10.0);
        assertThat(reading.rows().get(0).kind().number()).isEqualTo(4);
        assertThat(reading.rows())
                .extracting(r -> r.kind().kind().name())
                .containsExactly("formation", "aerobatic glider", "parachutists");
    }

    @Test
    void actOfTheShowIsMovedAndKeepsItsWords() throws ShowFileException, CannotBe {
        Show show = taken("start,act,aircraft\n14:00,Heron,helicopter\n14:10,Owl,helicopter\n", empty());
        RunningOrder.Reading reading = read("act,start,minutes\nheron,15:00,6\n", show);
        assertThat(reading.rows().get(0).said()).containsExactly("The show has it at 14:00 for 10 min; it is moved");
        Show moved = RunningOrder.take(reading, adding).of(show).show();
        assertThat(moved.acts()).extracting(Act::title).containsExactly("Owl", "Heron");
        assertThat(moved.acts().get(1).figures()).isEqualTo(show.acts().get(0).figures());
        assertThat(moved.acts().get(1).slotStart()).isEqualTo(LocalTime.of(15, 0));
    }

    @Test
    void whatIsGivenIsTakenAgainAsItIs() throws ShowFileException, CannotBe {
        Show show = taken(
                "start,minutes,act,performer,aircraft\n23:50,7.25,\"Night, \"\"late\"\"\",Zoë Ångström,helicopter\n"
                        + "00:05,4,=SUM(A1),,fly-past\n0:20,4,עפיפון,,glider\n",
                empty());
        assertThat(show.acts()).hasSize(2);
        String given = RunningOrder.of(show);
        RunningOrder.Reading again = read(given, show);
        assertThat(again.rows()).allMatch(row -> row.taken() && row.actId() != null);
        assertThat(RunningOrder.take(again, adding).of(show).show()).isEqualTo(show);
    }

    @Test
    void whatASpreadsheetWouldRunIsTamed() throws ShowFileException, CannotBe {
        Show show = taken("act,start\nx,14:00\n", empty());
        Show hostile = show.withAct(show.acts().get(0).withTitle("=HYPERLINK(\"a\")"));
        assertThat(RunningOrder.of(hostile)).contains("\"'=HYPERLINK(\"\"a\"\")\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n ,,\n", "start,act\n", "14:00\n15:00\n", "\"never closed", "a\0b,c"})
    void whatIsNoRunningOrderIsASentence(String text) {
        assertThatThrownBy(() -> read(text, empty()))
                .isInstanceOf(ShowFileException.class)
                .hasMessageStartingWith("pasted cells")
                .message()
                .hasSizeLessThan(300);
    }

    @Test
    void tooManyRowsAndLettersAreSentences() {
        assertThatThrownBy(() -> read("act,start\n" + "x,14:00\n".repeat(10_001), empty()))
                .hasMessageContaining("10,000");
        assertThatThrownBy(() -> read("act,start\n" + "x".repeat(5_001) + ",14:00\n", empty()))
                .hasMessageContaining("5,001 letters");
    }

    @Test
    void actsOverWhatAShowMayHaveAreToldBeforeAnyIsTaken() throws ShowFileException {
        StringBuilder rows = new StringBuilder("act,start,minutes\n");
        for (int i = 0; i < 210; i++) {
            rows.append("act ").append(i).append(",10:00,1\n");
        }
        RunningOrder.Reading reading = read(rows.toString(), empty());
        assertThat(reading.taken()).isEqualTo(200);
        assertThat(reading.rows().get(199).said()).noneMatch(said -> said.contains("at most"));
        assertThat(reading.rows().get(200).said())
                .containsExactly("A show has 200 acts at most, and this one is over that; split the day");
    }

    @Test
    void aDocumentIsNoTableAndIsToldAtOnce() {
        assertThatThrownBy(() -> read("act,start\n" + ("x".repeat(4_000) + ",14:00\n").repeat(9_000), empty()))
                .hasMessageContaining("the limit is 2,000,000");
    }

    @Test
    void aNameOfFiveThousandLettersIsRefusedAlone() throws ShowFileException {
        RunningOrder.Reading reading = read("act,start\n" + "x".repeat(5_000) + ",14:00\nOwls,14:10\n", empty());
        assertThat(reading.rows().get(0).said())
                .containsExactly("The name of the act is 5000 letters long; shorten it to 300");
        assertThat(reading.rows().get(1).taken()).isTrue();
    }

    @Test
    void unknownAircraftIsTimedAndSaysSo() throws ShowFileException {
        ActRow row = read("act,aircraft,start\nMystery,Zorblatt 9,14:00\n", empty())
                .rows()
                .get(0);
        assertThat(row.kind().kind().flies()).isFalse();
        assertThat(row.said().get(0)).contains("“Zorblatt 9” is no kind of aircraft known here");
        assertThat(List.of(row.said().get(1))).allMatch(said -> said.contains("10 min are assumed"));
    }
}
