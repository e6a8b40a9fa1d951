package crowdline;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the arrows between packages, and which library stays with whom. */
class ArchitectureTest {

    /** A package, and why it stands where it stands: what it may not use comes after it. */
    private record Room(String name, String why) {}

    /** Each package may use only those before it, so that none need each other in a circle. */
    private static final List<Room> ORDER = List.of(
            new Room("measure", "a number is checked and converted the same wherever it comes from"),
            new Room("show.bounds", "how much a show may hold is said before anything that is in it"),
            new Room("show.figure", "a figure is what it is whatever flies it"),
            new Room("show.aircraft", "an aircraft, told or typical of its kind, belongs to no act"),
            new Room("show.catalogue", "figures are known by name before a show has any"),
            new Room("show", "what a show is must be said without files, flights or screens"),
            new Room("show.check", "a show is judged by what it is, and is a show whatever is found"),
            new Room("show.weather", "the air of a show is the same whoever reported it"),
            new Room("glossary", "what is explained is found by its words, whoever asks"),
            new Room("speech.say", "how something is said depends on no speaker and no screen"),
            new Room("speech.pace", "seconds follow from words and one speaker"),
            new Room("speech.plain", "what is hard to follow is judged from the text where it stands"),
            new Room("speech.hear", "edges of speech are found in levels, without a microphone"),
            new Room("list.word", "words are words before anything is made of them"),
            new Room("list.line", "what was read is handed on without how it was read"),
            new Room("list.name", "a name is known by its words"),
            new Room("list.split", "a text is parted by its marks and words, not by what it says"),
            new Room("list.draft", "what is said is gathered, whoever reads it"),
            new Room("list.piece", "a piece is read without those around it"),
            new Room("list.about", "what a letter says beside its figures is read from what they left over"),
            new Room("list", "what a pilot wrote is read from its words and the catalogue, before anything is flown"),
            new Room("flight.air", "the air is there before anything flies in it"),
            new Room("flight.body", "what flies is numbers, however it is moved"),
            new Room("flight.leg", "a leg is flown as it is told, and knows no figure"),
            new Room("flight.shape", "a figure is shaped for an aircraft before an act is flown with it"),
            new Room("flight", "a flight follows from air, airframe and elements, whoever asks for it"),
            new Room("flight.moment", "what there is to see is found in a flight and changes nothing in it"),
            new Room("layout", "where figures are flown follows from wishes, whoever has them"),
            new Room("arrange", "an act is made of a list without files and screens"),
            new Room("sight.picture", "what an eye sees of an aircraft follows from geometry, whatever it flies"),
            new Room("sight.sketch", "drawn by hand, so nothing may be computed from it"),
            new Room("sight.clue", "what a figure looked like is asked of whoever saw it, in whatever window"),
            new Room("glossary.drill", "what is asked of a learner, and when again, follows from figures and answers"),
            new Room("sight", "what the crowd sees is made from a flight and says nothing of how it is told"),
            new Room(
                    "sight.fact", "what a crowd can picture is made of what it sees, and read by nothing that is seen"),
            new Room("timing", "how long a figure lasts is learned from passes, whatever timed them"),
            new Room("patter", "what to say when is planned from a question that holds all it needs"),
            new Room("draft", "a first draft is written from a flight and planned like any words"),
            new Room("edit", "what is changed in a show is told by name and can be taken back, whoever shows it"),
            new Room("edit.act", "an act is edited and laid out again without files and screens"),
            new Room("edit.shape", "a shape is edited by words, whatever act it is flown in"),
            new Room("edit.day", "the day, the place and the people are edited without files and screens"),
            new Room("telemetry", "bytes become readings without a port"),
            new Room("telemetry.serial", "the port is opened in one place"),
            new Room("trace", "figures are found in a flight of which there is no plan"),
            new Room("follow", "the follower is told readings and hands, and knows no show that runs"),
            new Room("live.event", "what happened is kept for ever and must not hang on what is made of it"),
            new Room("live.state", "the next state follows from state and event alone"),
            new Room("live.now", "what is read off a state changes nothing in it"),
            new Room("live.debrief", "a debrief is made from what was kept"),
            new Room("storage.file", "a file is bytes and lines, whatever is in them"),
            new Room("storage.json", "JSON is read and laid out without knowing what it says"),
            new Room("storage.show", "the form of the show file is known here alone"),
            new Room("storage.page", "a page for a browser is data in a form, whoever sends it"),
            new Room("storage.unsaved", "what is not saved is kept as a show file is written, whoever edits it"),
            new Room("storage.journal", "a journal is read again without the program that wrote it"),
            new Room("storage.passes", "passes are kept beside their show, whoever timed them"),
            new Room("storage.settings", "what is kept for the person at the desk is told of no show"),
            new Room("sheet.ink", "strokes and letters are painted whatever they show"),
            new Room("sheet.chart", "a chart is drawn with letters, whatever page it stands on"),
            new Room("sheet.page", "a page is laid out whatever stands on it, and printed as it was laid out"),
            new Room("sheet", "pages are drawn from what they are handed"),
            new Room("sheet.still", "a figure in one picture is the same on a screen and on paper"),
            new Room("sheet.day", "a day is told whoever asks for it"),
            new Room("exchange", "what a spreadsheet hands over is an edit, whoever looks at it first"),
            new Room("loaded", "commands and windows ask the same show the same questions"),
            new Room(
                    "practice", "a flight to practise on and its score are made without a clock, a thread or a screen"),
            new Room("paper", "what is taken along on paper is made of a loaded show without a screen"),
            new Room("steer", "what the aircraft may do to the show is tested without a thread"),
            new Room("running", "the running show runs without a window"),
            new Room("console.theme", "a look knows nothing of what wears it"),
            new Room("console.paint", "words and shapes are painted whatever they mean"),
            new Room("console.keys", "which key gives which command is one table"),
            new Room("console.window", "a window knows nothing of what is in it"),
            new Room("console.place", "what all places share knows none of them"),
            new Room("console.help", "every place is explained, and none explains itself"),
            new Room("console.tour", "the tour names places and knows none of them"),
            new Room("console.path", "a path is painted the same in every place"),
            new Room("console.foot", "messages are shown wherever they come from"),
            new Room("console.edit", "one show is edited in the window, whichever place shows it"),
            new Room("console.incident", "the incident page hangs on nothing else that could go wrong"),
            new Room("console.receiver", "a window of its own"),
            new Room("console.pedals", "a window of its own"),
            new Room("console.pace", "a window of its own"),
            new Room("console.preview", "a window of its own"),
            new Room("console.passes", "passes are called the same in every place"),
            new Room("console.prepare.field", "a field knows nothing of what is typed into it"),
            new Room("console.prepare.page", "an edit is asked for in one way, whichever page asks"),
            new Room("console.prepare.glance", "a show is put into words before anything paints them"),
            new Room("console.prepare.figure", "a figure is shown and edited the same in every act"),
            new Room("console.prepare.act", "an act is edited without the pages beside it"),
            new Room("console.prepare.list", "a list is read and shown without the acts of the show"),
            new Room("console.prepare.cells", "a window of its own"),
            new Room("console.prepare.day", "a page"),
            new Room("console.prepare.aircraft", "a page"),
            new Room("console.prepare.people", "a page"),
            new Room("console.prepare.announce", "a page"),
            new Room("console.prepare.duty", "a duty is asked for whatever page it stands beside"),
            new Room("console.prepare", "a place"),
            new Room("console.words", "a place"),
            new Room("console.walk", "a place"),
            new Room("console.live.row", "what every row is made of knows none of them"),
            new Room("console.live.strip", "a row"),
            new Room("console.live.day", "what is told of the day, whatever row stands beside it"),
            new Room("console.live.say", "a row"),
            new Room("console.live.next", "a row"),
            new Room("console.live.now", "a row, and the minutes of the act it is in"),
            new Room("console.live.find", "what is found knows nothing of what is flown"),
            new Room("console.live", "a place"),
            new Room("console.second", "the second window shows what Live shows, and Live does not know who looks"),
            new Room("console.practice", "a practice is asked for and told of, whatever flies it"),
            new Room("console.debrief", "a place"),
            new Room("console.glossary", "a place"),
            new Room("console", "the frame holds the places and is known to none"),
            new Room("console.pictures", "pictures are taken of the window as it is"),
            new Room("app.shell", "what the machine gives is asked for by commands and wiring alone"),
            new Room("app.sound", "a microphone is a device"),
            new Room("app.command", "a command prints, and needs no screen"),
            new Room("app.window.work", "files and the window are waited for in one way, whoever waits"),
            new Room("app.window.time", "passes and paces are kept whichever show they are used in"),
            new Room("app.window.glossary", "figures are explained and learned without a show"),
            new Room("app.window.show", "a show is opened and run whether or not anybody edits it"),
            new Room("app.window.edit", "a show is edited beside the one that runs"),
            new Room("app.window.practice", "a practice begins beside the show that runs"),
            new Room("app.window.walk", "what is rehearsed and looked back at changes nothing in the show"),
            new Room("app.window.paper", "paper is made without the window"),
            new Room("app.window.device", "what is plugged in is told of no show"),
            new Room("app.window.second", "a show that runs elsewhere is only read"),
            new Room("app.window", "the wiring knows everything it wires and is known to none of it"),
            new Room("app.demo", "pictures of the demo need the whole program"),
            new Room("app", "where the program starts"));

    private static final List<String> NAMES = ORDER.stream().map(Room::name).toList();

    private static final String APP = "crowdline.app..";
    private static final String CONSOLE = "crowdline.console..";

    private static final Path SOURCES = Path.of("src", "main", "java");

    private static final JavaClasses CLASSES = ProgramClasses.imported();

    @Test
    void scanSeesTheClassesOfEverySourcePackage() throws IOException {
        List<String> packagesInSources = SourceTree.javaFilesUnder(SOURCES).stream()
                .map(file ->
                        SOURCES.relativize(file.resolveSibling(".")).normalize().toString())
                .map(folder -> folder.replace(File.separatorChar, '.'))
                .distinct()
                .toList();

        assertThat(packagesInSources).isNotEmpty();
        assertThat(CLASSES.stream().map(JavaClass::getPackageName)).containsAll(packagesInSources);
    }

    @Test
    void everyClassHasAPlaceInTheOrder() {
        String[] places = NAMES.stream().map(ArchitectureTest::packageOf).toArray(String[]::new);

        classes()
                .should()
                .resideInAnyPackage(places)
                .because("a package outside the order has no arrows; give it its place in ORDER and in DEVELOPERS.md")
                .check(CLASSES);
    }

    @ParameterizedTest(name = "{0} uses nothing that comes after it")
    @MethodSource("roomsAndThoseAfterThem")
    void roomsUseOnlyThoseBeforeThem(String name, List<String> after, String why) {
        noClasses()
                .that()
                .resideInAPackage(packageOf(name))
                .should()
                .dependOnClassesThat(in(after))
                .because(why)
                .check(CLASSES);
    }

    /** Compares names, where a pattern for each room would be tried on each dependency. */
    private static DescribedPredicate<JavaClass> in(List<String> rooms) {
        Set<String> packages = rooms.stream().map(ArchitectureTest::packageOf).collect(Collectors.toSet());
        return DescribedPredicate.describe("reside in any of " + rooms, c -> packages.contains(c.getPackageName()));
    }

    static Stream<Arguments> roomsAndThoseAfterThem() {
        return IntStream.range(0, ORDER.size() - 1)
                .mapToObj(i -> Arguments.of(
                        ORDER.get(i).name(),
                        NAMES.subList(i + 1, NAMES.size()),
                        ORDER.get(i).why()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"prepare", "words", "walk", "live", "debrief", "glossary"})
    void placesKnowNothingOfEachOther(String place) {
        String[] others = Stream.of("prepare", "words", "walk", "live", "debrief", "glossary")
                .filter(other -> !other.equals(place))
                .map(other -> packageOf("console." + other) + "..")
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage(packageOf("console." + place) + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(others)
                .because("a place can be changed, tested and thrown away alone")
                .check(CLASSES);
    }

    @ParameterizedTest
    @ValueSource(strings = {"act", "list", "cells", "day", "aircraft", "people", "announce"})
    void pagesOfPrepareKnowNothingOfEachOther(String page) {
        String[] others = Stream.of("act", "list", "cells", "day", "aircraft", "people", "announce")
                .filter(other -> !other.equals(page))
                .map(other -> packageOf("console.prepare." + other))
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage(packageOf("console.prepare." + page))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(others)
                .because("a page edits one thing of the show, and the show alone joins them")
                .check(CLASSES);
    }

    @Test
    void commandsThatPrintNeedNoWindow() {
        noClasses()
                .that()
                .resideInAPackage("crowdline.app.command")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(CONSOLE, "crowdline.app.window..", "javax.swing..")
                .because("they must run where there is no screen, and start without loading one")
                .check(CLASSES);
    }

    @Test
    void loadedShowsAreNotWiring() {
        noClasses()
                .that()
                .resideInAnyPackage("crowdline.loaded", "crowdline.steer", "crowdline.running")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(CONSOLE, APP)
                .because("what computes and what runs must not hang on how it is shown or started")
                .check(CLASSES);
    }

    @ParameterizedTest(name = "only {1} use {0}")
    @MethodSource("librariesAndTheirUsers")
    void librariesStayWithTheirUsers(List<String> library, List<String> users, String reason) {
        noClasses()
                .that(DescribedPredicate.not(resideInAnyPackage(users.toArray(String[]::new))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(library.toArray(String[]::new))
                .because(reason)
                .check(CLASSES);
    }

    static Stream<Arguments> librariesAndTheirUsers() {
        String sheet = "crowdline.sheet..";
        return Stream.of(
                Arguments.of(
                        List.of("javax.swing..", "com.formdev..", "net.miginfocom.."),
                        List.of(CONSOLE, APP),
                        "everything else must run and be tested without a screen"),
                Arguments.of(
                        List.of("java.awt..", "javax.print..", "javax.imageio.."),
                        List.of(CONSOLE, APP, sheet),
                        "only what draws may draw; sheets draw on paper without Swing"),
                Arguments.of(
                        List.of("org.apache.pdfbox..", "org.apache.fontbox..", "de.rototor.."),
                        List.of(sheet),
                        "PDF is one way to paper and only pages know it"),
                Arguments.of(
                        List.of("org.jfree.."),
                        List.of("crowdline.sheet.chart.."),
                        "what a chart shows is data, and what draws it can be changed"),
                Arguments.of(
                        List.of("tools.jackson..", "com.fasterxml.jackson..", "com.networknt.."),
                        List.of("crowdline.storage.."),
                        "the file format must be able to change without the domain"),
                Arguments.of(
                        List.of("com.fazecast.."),
                        List.of("crowdline.telemetry.serial.."),
                        "framing and decoding must be testable without a port"),
                Arguments.of(
                        List.of("io.jenetics.."),
                        List.of("crowdline.telemetry.."),
                        "a flight log is a kind of telemetry whatever its file"),
                Arguments.of(
                        List.of("org.shredzone.."), List.of("crowdline.sight.."), "where the sun is belongs to sight"),
                Arguments.of(
                        List.of("javax.sound.."),
                        List.of(APP),
                        "a microphone is a device; what is heard is judged from levels, without one"),
                Arguments.of(List.of("picocli.."), List.of(APP), "commands are wiring, not domain"));
    }

    @Test
    void namesSayWhatAThingIs() {
        noClasses()
                .should()
                .haveNameMatching("(?i).*\\.(util|utils|helper|helpers|manager|common|impl)\\..*"
                        + "|.*(Utils?|Helpers?|Manager|Impl)(\\$.*)?")
                .because("such a name says that nobody knew what belongs there")
                .check(CLASSES);
    }

    private static String packageOf(String name) {
        return "crowdline." + name;
    }
}
