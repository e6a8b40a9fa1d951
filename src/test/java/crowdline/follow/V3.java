package crowdline.follow;

/** A direction or place in the display frame, for the aircraft of the trials. */
record V3(double x, double y, double z) {
    static final V3 UP = new V3(0, 0, 1);

    V3 plus(V3 o) {
        return new V3(x + o.x, y + o.y, z + o.z);
    }

    V3 minus(V3 o) {
        return new V3(x - o.x, y - o.y, z - o.z);
    }

    V3 times(double k) {
        return new V3(k * x, k * y, k * z);
    }

    double dot(V3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    V3 cross(V3 o) {
        return new V3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    V3 unit() {
        return times(1 / Math.max(length(), 1e-12));
    }

    /** The part at a right angle to a unit direction. */
    V3 across(V3 d) {
        return minus(d.times(dot(d)));
    }

    /** Turned about a unit axis, right-handed. */
    V3 turned(V3 axis, double rad) {
        double c = Math.cos(rad);
        return times(c).plus(axis.cross(this).times(Math.sin(rad))).plus(axis.times(axis.dot(this) * (1 - c)));
    }
}
