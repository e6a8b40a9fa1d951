package crowdline.console.pace;

import crowdline.console.paint.Box;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.speech.hear.Hearing;
import java.awt.Dimension;

/** What the microphone hears: a shape and a word, and a bar as long as the sound stands over the noise. */
final class LevelMeter extends Painted<LevelMeter.Level> {
    /** A bar as long as its place, decibels over the noise. */
    private static final double LONGEST_DB = 40;

    private static final int STEPS = 20;
    private static final double WORD_SHARE = 0.5;

    /**
     * What the meter shows.
     *
     * @param steps how long the bar is, 0 to {@value #STEPS}
     */
    record Level(Mark mark, int steps) {
        static final Level WAITING = new Level(new Mark(Form.RING, Tone.CALM, "opening the microphone"), 0);

        static Level of(Hearing hearing) {
            long steps = Math.round(STEPS * Math.min(1, hearing.overNoiseDb() / LONGEST_DB));
            return new Level(mark(hearing), (int) steps);
        }

        private static Mark mark(Hearing hearing) {
            if (hearing.tooLoud()) {
                return new Mark(Form.STOP, Tone.CAUTION, "too loud: move away from the microphone");
            }
            return switch (hearing.state()) {
                case DEAD -> new Mark(Form.CROSS, Tone.CAUTION, "no sound at all: is it off, or not allowed?");
                case LEARNING -> new Mark(Form.CLOCK, Tone.CALM, "listening to the background noise: wait a moment");
                case QUIET -> new Mark(Form.RING, Tone.CALM, "quiet");
                case SPEECH, PAUSE -> new Mark(Form.DISC, Tone.GOOD, "hearing you");
                case IGNORING -> new Mark(Form.BARS, Tone.CALM, "waiting for quiet");
            };
        }
    }

    LevelMeter(Appearance appearance) {
        super("Microphone", appearance);
        setPreferredSize(new Dimension(10, appearance.px(30)));
        show(Level.WAITING);
    }

    @Override
    protected String spoken(Level shown) {
        return shown.mark().word();
    }

    @Override
    protected void paint(Pen pen, Level shown, Box box) {
        double words = box.w() * WORD_SHARE;
        pen.mark(shown.mark(), TextRole.SMALL, box.left(words));
        Box bar = box.right(box.w() - words - 8).inset(0, box.h() * 0.3);
        pen.fill(bar, pen.palette().rule());
        pen.fill(bar.left(bar.w() * shown.steps() / STEPS), pen.palette().accent());
    }
}
