package crowdline.console.path;

import java.util.List;

/** Where in a flight one is that is watched: a clock that can be stopped, set, and run at five speeds. Time is a parameter. */
public final class Player {
    public static final List<Double> SPEEDS = List.of(0.25, 0.5, 1.0, 2.0, 4.0);

    private double fromS;
    private double toS;
    private double positionS;
    private double sinceS;
    private boolean playing;
    private double speed = 1;

    /** Another act, or other times for it; stops at its beginning. */
    public void load(double newFromS, double newToS) {
        fromS = newFromS;
        toS = Math.max(newFromS, newToS);
        positionS = newFromS;
        playing = false;
    }

    public double fromS() {
        return fromS;
    }

    public double toS() {
        return toS;
    }

    public double speed() {
        return speed;
    }

    /** True while it runs; at its end it has stopped. */
    public boolean playing(double nowS) {
        return playing && positionS(nowS) < toS;
    }

    public boolean atEnd(double nowS) {
        return positionS(nowS) >= toS;
    }

    /** Seconds of the act. */
    public double positionS(double nowS) {
        double moved = playing ? Math.max(0, nowS - sinceS) * speed : 0;
        return Math.min(toS, positionS + moved);
    }

    /** Runs or stops; from the end it begins again. */
    public void toggle(double nowS) {
        boolean was = playing(nowS);
        double at = positionS(nowS);
        goTo(!was && at >= toS ? fromS : at, nowS);
        playing = !was;
    }

    public void play(double nowS) {
        goTo(positionS(nowS), nowS);
        playing = true;
    }

    public void stop(double nowS) {
        goTo(positionS(nowS), nowS);
        playing = false;
    }

    public void goTo(double atS, double nowS) {
        positionS = Math.max(fromS, Math.min(toS, atS));
        sinceS = nowS;
    }

    /** One step faster or slower. */
    public void change(int steps, double nowS) {
        goTo(positionS(nowS), nowS);
        int at = SPEEDS.indexOf(speed) + steps;
        speed = SPEEDS.get(Math.max(0, Math.min(SPEEDS.size() - 1, at)));
    }

    /** "½×". */
    public String inWords() {
        return speed == 0.25 ? "¼×" : speed == 0.5 ? "½×" : Math.round(speed) + "×";
    }
}
