package crowdline.console;

import crowdline.console.debrief.Charts;
import crowdline.console.debrief.DayChoice;
import crowdline.console.debrief.DebriefHost;
import crowdline.console.debrief.DebriefView;
import crowdline.console.edit.EditHost;
import crowdline.console.incident.IncidentView;
import crowdline.console.live.IncidentPresenter;
import crowdline.console.live.LiveView;
import crowdline.console.live.SampleOnAir;
import crowdline.console.live.SmallShow;
import crowdline.console.pace.PaceHost;
import crowdline.console.pace.RemarksToTime;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.pedals.PedalHost;
import crowdline.console.practice.PracticeHost;
import crowdline.console.preview.PaperHost;
import crowdline.console.receiver.Receivers;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import crowdline.console.walk.SmallTour;
import crowdline.console.walk.Walk;
import crowdline.console.words.SampleWords;
import crowdline.sheet.page.Page;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.speech.pace.Pace;
import crowdline.speech.say.Spoken;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonStatus;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Everything a window can ask, answered at once with a made-up show; what was asked is kept. On the event thread. */
final class StageHost implements Host, EditHost, PedalHost, PaceHost, DebriefHost, PaperHost {
    final SampleOnAir onAir = new SampleOnAir();
    final List<Show> edited = new ArrayList<>();
    final Walk walk = new SmallTour().walk();
    /** Whether a show is open. */
    boolean mayOpenDemo = true;

    private boolean open;

    Runnable printing = () -> {};
    final SamplePractice practice = new SamplePractice();
    private @Nullable ConsoleFrame frame;

    int quit;

    StageHost() {
        this(true);
    }

    StageHost(boolean open) {
        this.open = open;
    }

    /** Shows a moment of a show in Live from now on, or has no show open. */
    void show(@Nullable LiveView next) {
        RealWindow.onEventThread(() -> {
            open = next != null;
            if (next != null) {
                onAir.view = next;
            }
            tell();
            return open;
        });
    }

    private void tell() {
        ConsoleFrame window = frame;
        if (window != null) {
            window.onAir(open ? onAir : null);
            window.walk(open ? walk : null);
        }
    }

    /** Answers this window. */
    void answer(ConsoleFrame window) {
        frame = window;
        tell();
    }

    @Override
    public void askForWalk() {
        ConsoleFrame window = frame;
        if (window != null) {
            window.walk(open ? walk : null);
        }
    }

    @Override
    public IncidentView incident(double openS) {
        return IncidentPresenter.withoutShow(LocalTime.NOON, openS);
    }

    @Override
    public @Nullable DebriefHost debrief() {
        return open ? this : null;
    }

    @Override
    public DebriefView view() {
        return new DebriefView(
                "Marram Field",
                new Mark(Form.DISC, Tone.GOOD, "All thanked"),
                List.of(),
                List.of(),
                List.of(),
                "",
                Charts.NONE);
    }

    @Override
    public void days(Consumer<List<DayChoice>> answer) {}

    @Override
    public void beside(Path journal) {}

    @Override
    public void alone() {}

    @Override
    public void saveText(Path file) {}

    @Override
    public void saveDay(Path file) {}

    @Override
    public void saveJson(Path file) {}

    @Override
    public void saveTable(Path file) {}

    @Override
    public PaperHost paper() {
        return this;
    }

    @Override
    public void make(Show show, Asked asked, Answer answer) {
        answer.made(new Pages(asked.kind().title(), List.of(new Page(PaperSize.A4, List.of(), List.of())), List.of()));
    }

    @Override
    public void save(Pages pages, Path file, Answer answer) {}

    @Override
    public void print(Pages pages, Answer answer) {
        printing.run();
    }

    @Override
    public void stop() {}

    @Override
    public double nowS() {
        return 0;
    }

    @Override
    public EditHost edit() {
        return this;
    }

    @Override
    public PaceHost pace() {
        return this;
    }

    @Override
    public PracticeHost practice() {
        return practice;
    }

    @Override
    public PedalHost pedals() {
        return this;
    }

    @Override
    public void open(Path file) {}

    @Override
    public boolean mayOpenDemo() {
        return mayOpenDemo;
    }

    @Override
    public void openDemo() {}

    @Override
    public @Nullable DayAir air() {
        return open ? DayAir.STANDARD : null;
    }

    @Override
    public void useAir(DayAir air, boolean toBeSaved) {}

    @Override
    public void findReceivers(Consumer<Receivers> found) {
        found.accept(new Receivers(List.of(), "", ""));
    }

    @Override
    public void useReceiver(String where, double faster) {}

    @Override
    public List<Path> recent() {
        return List.of(Path.of("marram.json"));
    }

    @Override
    public void keep(Appearance appearance) {}

    @Override
    public void quit() {
        quit++;
    }

    @Override
    public void open() {
        ConsoleFrame window = frame;
        if (window != null) {
            window.edit(new EditOpened("marram.json", SmallShow.show(), SampleWords.BASIS));
            window.showFacts(SampleWords.FACTS);
        }
    }

    @Override
    public void edited(Show show) {
        edited.add(show);
    }

    @Override
    public void save(Show show) {}

    @Override
    public void saveAs(Show show, Path file) {}

    @Override
    public void intoLive(Show show) {}

    @Override
    public void findPorts(Consumer<PedalHost.Found> found) {
        found.accept(new PedalHost.Found(List.of(), null));
    }

    @Override
    public LearnedButtons learned() {
        return LearnedButtons.NONE.with("F12", "next").with("B", "next");
    }

    @Override
    public void keep(LearnedButtons next) {}

    @Override
    public ButtonStatus status() {
        return new ButtonStatus(ButtonStatus.State.READY, "buttons ready");
    }

    @Override
    public void find(Consumer<PaceHost.Found> found) {
        found.accept(new PaceHost.Found(
                List.of("Ann", "Bea"), "Ann", RemarksToTime.of(List.of(), new Spoken(Map.of())), ""));
    }

    @Override
    public void use(String speaker) {}

    @Override
    public void useNext() {}

    @Override
    public void keep(Pace pace) {}
}
