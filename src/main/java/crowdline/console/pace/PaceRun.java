package crowdline.console.pace;

import crowdline.speech.pace.PaceFit;
import crowdline.speech.pace.TimedRemark;
import crowdline.speech.say.SpokenText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Remarks said one after another against a stopwatch; every key turns a run into the next.
 *
 * @param speaker who speaks
 * @param remarks what is to be said, in order
 * @param timed what was said so far, in the same order
 * @param startedAtS when the speaker began the remark that is being said, seconds of any clock, or null between remarks
 * @param said a sentence about what was done last
 */
public record PaceRun(
        String speaker,
        List<SpokenText> remarks,
        List<TimedRemark> timed,
        @Nullable Double startedAtS,
        String said) {

    public PaceRun {
        remarks = List.copyOf(remarks);
        timed = List.copyOf(timed);
        if (remarks.isEmpty() || timed.size() > remarks.size()) {
            throw new IllegalArgumentException(
                    timed.size() + " of " + remarks.size() + " remarks are timed; there must be one to time");
        }
    }

    /** Before the first remark. */
    public static PaceRun of(String speaker, List<SpokenText> remarks) {
        return new PaceRun(speaker, remarks, List.of(), null, "");
    }

    /** Starts the watch, or stops it; a timing that nobody can have spoken does not count. */
    public PaceRun startOrStop(double nowS) {
        Double startS = startedAtS;
        if (isDone()) {
            return this;
        }
        if (startS == null) {
            return new PaceRun(speaker, remarks, timed, nowS, "");
        }
        return counted(nowS - startS);
    }

    /** The microphone heard the remark to its end; a watch that runs by key goes before it. */
    public PaceRun heard(double seconds) {
        return isDone() || isRunning() ? this : counted(seconds);
    }

    /**
     * The key is pressed while the microphone hears the remark: the remark ends there, or, if nobody says it so fast,
     * has only just begun and is timed by key from where it was heard to begin.
     *
     * @param soFarS how long it has been heard, seconds
     */
    public PaceRun taken(double soFarS, double nowS) {
        PaceRun ended = heard(soFarS);
        return ended.timed().size() > timed.size() || isRunning() || isDone()
                ? ended
                : new PaceRun(speaker, remarks, timed, nowS - soFarS, "");
    }

    private PaceRun counted(double lastedS) {
        double seconds = Math.round(100 * lastedS) / 100.0;
        TimedRemark remark;
        try {
            remark = new TimedRemark(seconds, remarks.get(timed.size()));
            PaceFit.requirePlausible(remark);
        } catch (IllegalArgumentException e) {
            return new PaceRun(speaker, remarks, timed, null, sentence(String.valueOf(e.getMessage())));
        }
        List<TimedRemark> more = new ArrayList<>(timed);
        more.add(remark);
        return new PaceRun(speaker, remarks, more, null, String.format(Locale.UK, "That took %.1f s.", seconds));
    }

    /** Forgets the watch if it runs, else the last timing, so that its remark is said again. */
    public PaceRun again() {
        if (isRunning()) {
            return new PaceRun(speaker, remarks, timed, null, "The watch was stopped, so nothing was kept.");
        }
        return timed.isEmpty()
                ? this
                : new PaceRun(speaker, remarks, timed.subList(0, timed.size() - 1), null, "Say this one again.");
    }

    public boolean isRunning() {
        return startedAtS != null;
    }

    public boolean isDone() {
        return timed.size() == remarks.size();
    }

    /** Whether what was timed can be learned from. */
    public boolean isEnough() {
        return !timed.isEmpty() && !isRunning();
    }

    /** What is to be said now; empty when all is said. */
    public String text() {
        return isDone() ? "" : remarks.get(timed.size()).written();
    }

    /** How far the run is, such as "Remark 3 of 10". */
    public String count() {
        return isDone()
                ? "All " + remarks.size() + " remarks are timed"
                : "Remark " + (timed.size() + 1) + " of " + remarks.size();
    }

    /** What the keys do now. */
    public String hint() {
        if (isDone()) {
            return "Enter shows the pace. Backspace repeats the last one.";
        }
        if (isRunning()) {
            return "Timing. Press Space as you finish; Backspace starts again.";
        }
        return "Press Space as you start to speak, out loud, as you would on the day."
                + (timed.isEmpty() ? "" : " Backspace repeats the last one. Enter stops here.");
    }

    /** What to do when the microphone listens. */
    public String hintByMicrophone() {
        return isRunning() || isDone()
                ? hint()
                : "Read it out loud, as you would on the day; it is timed automatically. Space times it by hand instead."
                        + (timed.isEmpty() ? "" : " Backspace repeats the last one. Enter stops here.");
    }

    /** The same run with another sentence about what was done last. */
    public PaceRun saying(String sentence) {
        return new PaceRun(speaker, remarks, timed, startedAtS, sentence);
    }

    private static String sentence(String text) {
        return text.endsWith(".") ? text : text + ".";
    }
}
