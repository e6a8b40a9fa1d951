package crowdline.show;

/**
 * The wind at one height.
 *
 * @param heightFt above the datum, 34 to 20,000: above the 10 m at which the wind at the ground is measured
 * @param fromDeg true direction it comes from, 0 to 360
 * @param kt its speed, 0 to 200
 */
public record WindAt(double heightFt, double fromDeg, double kt) {
    public WindAt {
        Must.beWithin("heightFt", heightFt, 34, 20_000);
        Must.beWithin("fromDeg", fromDeg, 0, 360);
        Must.beWithin("kt", kt, 0, 200);
    }
}
