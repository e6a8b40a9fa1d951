package crowdline.show.figure;

/**
 * What there is to see within a figure, in the words of somebody who points at it. A closed set: files, screens and plans
 * know no others. They stand in the order in which those of one instant are told: what ends before what begins.
 *
 * <p>Some are worth watching: they are over in a second or two, look like nothing else in an act, and a thank-you or a
 * story said over them takes them away from the crowd. What is flown all the time (pulls up, rolls, turns), or is gone
 * before anyone could fall silent for it (flicks), is not.
 */
public enum MomentKind {
    BEGINS("begins"),
    ROLL_ENDS("the roll ends"),
    /** Worth watching: stopping it on its line is what the pilot is proud of. */
    SPIN_STOPS("the spin stops", true),
    STOPS_TUMBLING("stops tumbling"),
    TURN_ENDS("the turn ends"),
    PULLS_UP("pulls up"),
    PUSHES_UP("pushes up"),
    STRAIGHT_UP("straight up"),
    /** Out of a climb back to level, nose forward. */
    PUSHES_OVER("pushes over"),
    LEVELS_OFF("levels off"),
    /**
     * The greatest height between a climb and a descent, or where a half loop is level again. Worth watching where the
     * aircraft has become slow: it seems to hang there.
     */
    OVER_THE_TOP("over the top", true),
    HEADS_DOWN("heads down"),
    STRAIGHT_DOWN("straight down"),
    PULLS_OUT("pulls out"),
    PUSHES_OUT("pushes out"),
    ROLLS("rolls"),
    /** The middle of a roll that takes its time. */
    UPSIDE_DOWN("upside down"),
    ROLLS_UPSIDE_DOWN("rolls upside down"),
    ROLLS_ONTO_ITS_SIDE("rolls onto its side"),
    ROLLS_UPRIGHT("rolls upright"),
    DIPS_A_WING("dips a wing"),
    FLICKS("flicks"),
    SLOWING_FOR_THE_SPIN("slowing for the spin"),
    /** Worth watching: the wing lets go: the one instant a spin is explained by. */
    SPIN_BEGINS("the spin begins", true),
    /** Worth watching: an aeroplane that stands still in the air. */
    HANGS("hangs on its propeller", true),
    /** Worth watching: the cartwheel of a stall turn, which a word can hide. */
    PIVOTS("pivots", true),
    /** Worth watching: no aeroplane does that, and it lasts a second. */
    SLIDES_BACKWARDS("slides backwards", true),
    /** Worth watching: what ends the slide, as quick as a whip. */
    NOSE_FALLS_THROUGH("the nose falls through", true),
    /** Worth watching: nobody can follow it with the ear full. */
    TUMBLES("tumbles", true),
    TURN_BEGINS("the turn begins"),
    TURNS_BACK("turns back"),
    RUNS_IN("runs in"),
    FLIES_OUT("flies out");

    private final String words;
    private final boolean worthWatching;

    MomentKind(String words) {
        this(words, false);
    }

    MomentKind(String words, boolean worthWatching) {
        this.words = words;
        this.worthWatching = worthWatching;
    }

    /** What it is called on screens and in files. */
    public String words() {
        return words;
    }

    /** True if the crowd should be left to see it. */
    public boolean isWorthWatching() {
        return worthWatching;
    }
}
