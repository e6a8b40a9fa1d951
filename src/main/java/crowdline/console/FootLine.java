package crowdline.console;

import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.swing.Timer;

/** What the foot line says: what Live warns of while it is shown, and the messages, until they are read or mended. */
final class FootLine {
    /** How long good news stands in the foot line, milliseconds; tuned: time to look down from the sky and read it. */
    private static final int GOOD_NEWS_MS = 10_000;

    private final FootBar bar;
    private final BooleanSupplier inLive;
    private final BooleanSupplier inIncident;
    private final Timer forget = new Timer(GOOD_NEWS_MS, e -> forgetGoodNews());
    private String speaker = "";
    private List<Mark> banners = List.of();
    private List<Mark> warnings = List.of();

    /**
     * @param inLive whether Live is in front
     * @param inIncident whether the incident page is in front of it
     */
    FootLine(Appearance appearance, BooleanSupplier inLive, BooleanSupplier inIncident) {
        bar = new FootBar(appearance);
        this.inLive = inLive;
        this.inIncident = inIncident;
        forget.setRepeats(false);
    }

    FootBar bar() {
        return bar;
    }

    /** Messages, the most pressing first. */
    void tell(List<Mark> marks) {
        banners = List.copyOf(marks);
        forget.restart();
        show();
    }

    List<Mark> banners() {
        return banners;
    }

    /** What Live warns of, while it is shown. */
    void warn(List<Mark> marks) {
        warnings = List.copyOf(marks);
    }

    /** Good news has been read by now; what asks for something stays until it is mended. */
    void forgetGoodNews() {
        banners = banners.stream().filter(m -> m.tone() != Tone.GOOD).toList();
        show();
    }

    /** @param name whose pace the times are for; empty for the default's */
    void showSpeaker(String name) {
        speaker = name;
        show();
    }

    /** Paints what there is to say now. */
    void show() {
        boolean incident = inIncident.getAsBoolean();
        List<Mark> marks = new ArrayList<>(inLive.getAsBoolean() && !incident ? warnings : List.of());
        marks.addAll(banners);
        bar.show(new FootBar.Foot(marks, incident ? "" : FootBar.hint(speaker), incident ? "" : speaker));
    }
}
