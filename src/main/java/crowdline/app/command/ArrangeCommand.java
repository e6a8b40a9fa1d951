package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.arrange.ShowArranging;
import crowdline.edit.act.FirstDraft;
import crowdline.list.ListReader;
import crowdline.list.ListText;
import crowdline.list.about.AboutAct;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.measure.Hour;
import crowdline.sheet.RunningSheet;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Severity;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Pace;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.IncidentTemplate;
import crowdline.storage.show.KindsFile;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import crowdline.timing.FigureTime;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes an act of the list a pilot sent. */
@Command(
        name = "arrange",
        mixinStandardHelpOptions = true,
        description = {
            "Makes an act of the list of figures that a pilot sent: reads it as people write, draws each figure for the"
                    + " kind of aircraft, and lays them out along the display line with what is flown between them.",
            "What the list does not say is assumed, and marked so in the show file until the pilot has confirmed it."
        },
        footer = {
            "Ends with 0 if all went well, 1 if no act can be made of the list, 2 if a file or an option cannot be used.",
            RunningSheet.CAUTION
        })
public final class ArrangeCommand implements Callable<Integer> {
    private static final String STANDARD_INPUT = "-";
    /** No list is longer; beyond it the wrong file was named. */
    private static final int MOST_BYTES = 1 << 20;

    private static final int LONGEST_NOTE = 100;
    private static final LocalTime USUAL_START = LocalTime.of(14, 0);

    private final Terminal terminal;
    private final InputStream in;
    private final Clock clock;

    @Parameters(
            arity = "0..1",
            paramLabel = "LIST.txt|-",
            description = "The list, as text; - reads it from standard input.")
    private @Nullable String list;

    @Option(
            names = "--from",
            paramLabel = "LOG",
            description =
                    "Instead of a list: finds the figures in a flight log (NMEA 0183, IGC or GPX) by the path flown.")
    private @Nullable Path from;

    @Option(
            names = "--aircraft",
            required = true,
            paramLabel = "KIND",
            description =
                    "The kind of aircraft, such as \"light aerobatic biplane\", \"jet trainer\" or \"formation of 4\".")
    private String aircraft = "";

    @Option(names = "--title", paramLabel = "T", description = "How the act is announced.")
    private @Nullable String title;

    @Option(names = "--performer", paramLabel = "NAME", description = "Who flies it; without it, as the list says.")
    private @Nullable String performer;

    @Option(
            names = "--slot",
            paramLabel = "HH:MM",
            description = "When it begins; without it, as the list says, or at 14:00.")
    private @Nullable String slot;

    @Option(names = "--into", paramLabel = "SHOW.json", description = "Adds the act to this show instead of a new one.")
    private @Nullable Path into;

    @Option(
            names = "--out",
            paramLabel = "SHOW.json",
            description = "Writes the show here; without it, over the show of --into, or nowhere.")
    private @Nullable Path out;

    @Option(
            names = "--talk",
            paramLabel = "PERCENT",
            defaultValue = "50",
            description = "How much of the act the first draft of its words may fill, from 0 for no words at all to 100"
                    + " (${DEFAULT-VALUE}).")
    private int talk;

    @Option(names = "--json", description = "Print what was made as JSON.")
    private boolean json;

    public ArrangeCommand(Terminal terminal, InputStream in, Clock clock) {
        this.terminal = terminal;
        this.in = in;
        this.clock = clock;
    }

    /** An option or a file that cannot be used, in one sentence. */
    private static final class Unusable extends Exception {
        private static final long serialVersionUID = 1;

        Unusable(String sentence) {
            super(sentence);
        }

        String sentence() {
            return String.valueOf(getMessage());
        }
    }

    @Override
    public Integer call() throws ShowFileException {
        try {
            return arrange();
        } catch (Unusable e) {
            terminal.complain(e.sentence());
            return ExitCode.UNUSABLE;
        }
    }

    private int arrange() throws Unusable, ShowFileException {
        if (talk < 0 || talk > 100) {
            throw new Unusable("--talk is " + talk + "; give a share of the act in per cent, from 0 to 100");
        }
        LocalTime asked = slotStart();
        Kinds.Named kind = kind();
        if ((list == null) == (from == null)) {
            throw new Unusable("arrange takes a list, or a flight log with --from; give one of the two");
        }
        String text = list == null ? "" : text();
        ShowFile files = new ShowFile();
        @Nullable ShowReading before = into == null ? null : files.read(into);
        Show show = before == null ? fresh() : before.show();
        if (before != null && show == null) {
            before.findings().stream()
                    .filter(f -> f.severity() == Severity.ERROR)
                    .forEach(f -> terminal.complain(f.asLine()));
            return ExitCode.UNUSABLE;
        }
        Show known = Objects.requireNonNull(show);
        Catalogue catalogue = CatalogueFile.shipped();
        FigureList read = from == null
                ? new ListReader(catalogue.with(known.figures())).read(text)
                : LogList.read(from, known, kind.kind(), catalogue, terminal::complain);
        if (read.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR)) {
            say(read, null);
            return ExitCode.BLOCKED;
        }
        AboutAct said = AboutAct.of(read);
        ShowArranging.Made made = worded(
                new ShowArranging(catalogue).add(known, read, making(kind, said), about(kind, said, asked)), catalogue);
        Path target = out == null ? into : out;
        if (target != null) {
            if (before != null && target.equals(into)) {
                files.write(target, made.show(), before.document());
            } else if (Files.exists(target)) {
                throw new Unusable(target + " is there already; name another file for --out, or add the act to it with"
                        + " --into");
            } else {
                files.write(target, made.show());
            }
        }
        say(read, made);
        if (!json && target != null) {
            terminal.line("");
            terminal.line("Written to " + target + ".");
        }
        return ExitCode.FINE;
    }

    /** The act with a first draft of its words. */
    private ShowArranging.Made worded(ShowArranging.Made made, Catalogue catalogue) {
        Show drafted = new FirstDraft(catalogue, Pace.DEFAULT, talk / 100.0).of(made.show(), made.act());
        Act act = drafted.act(made.act().id()).orElseThrow();
        return new ShowArranging.Made(drafted, act, made.arranged());
    }

    /**
     * What was given counts, and then what the list says.
     *
     * @param start as given, or null
     */
    private ShowArranging.About about(Kinds.Named kind, AboutAct said, @Nullable LocalTime start) {
        String who = performer == null ? said.pilot() : performer;
        String named = title != null ? title : (who != null ? who + ", " : "") + called(kind, said);
        LocalTime begins = start != null ? start : Objects.requireNonNullElse(said.begins(), USUAL_START);
        return new ShowArranging.About(named, who, begins, said.minutes());
    }

    private Show fresh() {
        String name = title == null ? "New show" : title;
        return ShowArranging.empty(
                name,
                LocalDate.now(clock),
                clock.getZone(),
                IncidentTemplate.shipped().incident());
    }

    private static ShowArranging.Making making(Kinds.Named named, AboutAct said) {
        Kind kind = named.kind();
        String name = called(named, said);
        return id -> kind.flies()
                ? kind.airframe(id, name, Sliders.TYPICAL)
                : new TimedAircraft(id, name, kind, named.number());
    }

    /** The aircraft as the list calls it; as its kind is called where the list says no more than that. */
    private static String called(Kinds.Named named, AboutAct said) {
        return said.calledMoreThan(KindsFile.shipped())
                .orElseGet(() -> named.kind().name());
    }

    private @Nullable LocalTime slotStart() throws Unusable {
        String given = slot;
        if (given == null) {
            return null;
        }
        return Hour.typed(given)
                .orElseThrow(() ->
                        new Unusable("--slot is \"" + given + "\"; give the time as hours and minutes, such as 14:05"));
    }

    private Kinds.Named kind() throws Unusable {
        try {
            return KindsFile.shipped().counted(aircraft);
        } catch (IllegalArgumentException e) {
            throw new Unusable("--aircraft: " + e.getMessage());
        }
    }

    private String text() throws Unusable {
        String from = Objects.requireNonNull(list);
        try {
            byte[] bytes = from.equals(STANDARD_INPUT) ? in.readNBytes(MOST_BYTES + 1) : read(Path.of(from));
            if (bytes.length > MOST_BYTES) {
                throw new Unusable(from + " is longer than any list of figures; name the file with the list");
            }
            return ListText.of(bytes);
        } catch (ListText.NoText e) {
            throw new Unusable(e.inPlaceOf(from));
        } catch (IOException | java.nio.file.InvalidPathException e) {
            throw new Unusable(from + " cannot be read; check its name and that you may read it");
        }
    }

    private static byte[] read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new IOException(file + " is no file");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            return stream.readNBytes(MOST_BYTES + 1);
        }
    }

    private void say(FigureList read, ShowArranging.@Nullable Made made) {
        if (json) {
            terminal.json(JsonOut.of(ArrangedJson.of(read, made)));
            return;
        }
        for (ListLine line : read.lines()) {
            terminal.line(asLine(line));
        }
        if (made != null) {
            read.notes().forEach(note -> terminal.line("note: " + cut(note)));
        }
        read.findings().forEach(f -> terminal.line(f.severity().name().toLowerCase(Locale.ROOT) + ": " + f.message()));
        if (made != null) {
            told(AboutAct.of(read)).forEach(said -> terminal.line("the list says: " + said));
            terminal.line("");
            for (FigureTime time : ArrangedTimes.of(made)) {
                Figure figure = made.act().figure(time.figureId()).orElseThrow();
                terminal.line(String.format(
                        Locale.UK,
                        "%3d:%02d  %5.1f s  %s%s",
                        (int) time.startS() / 60,
                        (int) time.startS() % 60,
                        time.durationS(),
                        figure.transit() ? "  " : "",
                        figure.shownName()));
            }
            made.arranged().findings().forEach(f -> terminal.line("warning: " + f.message()));
        }
    }

    /** What was taken from the letter beside its figures, in words. */
    private List<String> told(AboutAct said) {
        List<String> told = new ArrayList<>();
        if (said.pilot() != null && performer == null) {
            told.add("it is flown by " + said.pilot());
        }
        if (said.aircraft() != null) {
            told.add("the aircraft is called " + said.aircraft());
        }
        if (said.begins() != null && slot == null) {
            told.add("it begins at " + Hour.toTheMinute(said.begins()));
        }
        if (said.minutes() != null) {
            told.add("all of it takes " + plain(said.minutes()) + " minutes");
        }
        return told;
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** The beginning of what may be a whole letter; the show file keeps what was asked of each figure. */
    private static String cut(String note) {
        String oneLine = note.replaceAll("\\s+", " ");
        return Written.brief(oneLine, LONGEST_NOTE + 1);
    }

    private static String asLine(ListLine line) {
        StringBuilder text = new StringBuilder();
        text.append('"').append(line.text()).append("\": ").append(line.title());
        if (!line.sure()) {
            text.append(line.figure() == null ? " (only a time)" : " (a guess)");
        }
        List<String> others = line.choices().stream()
                .filter(choice -> !choice.equals(line.figure()))
                .toList();
        if (!others.isEmpty()) {
            text.append("; or ").append(String.join(", ", others)).append('?');
        }
        return text.toString();
    }
}
