package crowdline.show;

import crowdline.show.bounds.Quantity;

/**
 * The wind at one height.
 *
 * @param heightFt above the datum, 34 to 20,000: above the 10 m at which the wind at the ground is measured
 * @param fromDeg true direction it comes from, 0 to 360
 * @param kt its speed, 0 to 200
 */
public record WindAt(double heightFt, double fromDeg, double kt) {
    public WindAt {
        Quantity.ALOFT_FT.must(heightFt);
        Quantity.ALOFT_FROM_DEG.must(fromDeg);
        Quantity.ALOFT_KT.must(kt);
    }
}
