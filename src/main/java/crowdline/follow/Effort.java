package crowdline.follow;

/**
 * How hard an aircraft was flown over some seconds.
 *
 * @param mps greatest speed, upwards included
 * @param bentG hardest bend of its path, in g; 0 on a straight line however steep
 * @param climbMps greatest climb or descent
 * @param awayM how far from the crowd it was on the mean
 */
record Effort(double mps, double bentG, double climbMps, double awayM) {}
