package crowdline.sheet.still;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Anchor;
import crowdline.sheet.ink.Lettering;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Flown;
import java.util.ArrayList;
import java.util.List;

/** A still on paper. */
public final class PaperStill {
    public static final PaperStill NONE = new PaperStill(Flown.NONE, Outline.MONOPLANE);

    private static final Tones PAPER =
            new Tones(0xFFFFFF, 0x16202A, 0x0A4A87, 0xB3001B, 0x16202A, 0x56636F, 0xFFFFFF, 0xE6E4DE, 0xB8C0C8);
    /** As wide as that lines are as thick as on a screen, points; tuned by eye. */
    private static final double WIDE_PT = 420;
    /** The lowest box, of its width. */
    private static final double LEAST_TALL = 0.3;

    /** Room under a figure, of its size. */
    private static final double LOW = 0.12;

    private static final double LEAST_PX = 0.3;
    private static final double NOTE_PT = 8.5;
    private static final double NOTE_LEADING = 1.6;

    private final Flown flown;
    private final Outline outline;

    /**
     * A figure to be drawn; nothing is drawn of an empty flight.
     *
     * @param outline the shape of the aircraft, where the figure has none of its own
     */
    public PaperStill(Flown flown, Outline outline) {
        this.flown = flown.isEmpty() ? flown : centred(flown);
        this.outline = outline;
    }

    /** In the middle before the eye and not high above the ground, wherever it is flown. */
    private static Flown centred(Flown flown) {
        Flown.Reach reach = flown.reach();
        double lowM = Math.min(
                reach.least().z(), LOW * Math.max(reach.size().x(), reach.size().z()));
        return flown.movedBy(
                -(reach.least().x() + reach.most().x()) / 2,
                0,
                lowM - reach.least().z());
    }

    /** Whether there is anything to draw. */
    public boolean isDrawn() {
        return !flown.isEmpty();
    }

    private Subject subject() {
        return Subject.of(flown, outline);
    }

    /** How high it is drawn in a box of this width, points: at most as high as it is wide; 0 for nothing. */
    public double height(double width) {
        if (!isDrawn()) {
            return 0;
        }
        double shape = Still.of(subject(), 0, 0, width, width).tallOfWide();
        double tall = Math.min(width, Math.max(LEAST_TALL * width, width * shape));
        return tall + under(width, tall);
    }

    /** The figure in a box, in points. */
    public List<Ink> inks(double x, double y, double width, double height) {
        if (!isDrawn()) {
            return List.of();
        }
        double under = under(width, height);
        double foot = y + height - under;
        Still still = Still.of(subject(), x, y, width, height - under);
        List<Ink> inks = new ArrayList<>();
        double groundY = still.place().frame().y(subject().eye().heightM());
        if (groundY < foot) {
            inks.add(Ink.rectangle(x, groundY, width, foot - groundY, PAPER.ground()));
            inks.add(Ink.line(x, groundY, x + width, groundY, PAPER.rule(), 0.8));
        }
        inks.addAll(still.inks(PAPER, Math.max(LEAST_PX, width / WIDE_PT)));
        String said = said(still, width);
        if (!said.isEmpty()) {
            inks.add(new Ink.Words(said, x, foot + NOTE_PT, NOTE_PT, false, Anchor.START, PAPER.path()));
        }
        return inks;
    }

    /** Room for what has to be said of it. */
    private double under(double width, double height) {
        String said = said(Still.of(subject(), 0, 0, width, height), width);
        return said.isEmpty() ? 0 : NOTE_LEADING * NOTE_PT;
    }

    /** What has to be said of it, if there is room for that. */
    private String said(Still still, double width) {
        String said = still.note().isEmpty() && flown.company().sketched() ? "A sketch of what happens" : still.note();
        return Lettering.widthPx(said, NOTE_PT, false) > width ? "" : said;
    }
}
