package crowdline.sight;

/** Everyday things to compare with, each with its source. Where only memory stands behind a value, it says so. */
public enum Everyday {
    MOTORWAY_LIMIT(70, "mph", "national speed limits as in the Highway Code, bedfordshire.police.uk"),
    MOTORWAY_CAR(120, "km/h", "from memory: cars on a motorway where limits are in kilometres"),
    TOWN_LIMIT(30, "mph", "national speed limits as in the Highway Code, bedfordshire.police.uk"),
    WALKING(4, "mph", "from memory: a brisk walk"),
    BICYCLE(12, "mph", "from memory: easy riding in town"),
    AIRLINER(550, "mph", "from memory: cruising speed of a jet airliner"),
    BUS_HEIGHT(4.4, "m", "double-decker, 4.4 to 4.7 m: lauraclery.com/double-decker-bus-height"),
    BUS_LENGTH(11, "m", "double-decker, 9.5 to 11.1 m: shunauto.com/article/how-long-is-a-bus-uk"),
    STOREY(3, "m", "from memory: one floor of a block of flats"),
    FOOTBALL_PITCH(105, "m", "within the 100 to 110 m for international matches, Laws of the Game, Law 1"),
    HEAD(5, "kg", "4.5 to 5 kg: danny.oz.au/anthropology/notes/human-head-weight.html"),
    CHILD(30, "kg", "from memory: weight of a child of nine or so"),
    BUCKET(10, "kg", "from memory: ten litres of water"),
    GROWN_UP(75, "kg", "from memory: weight of an adult"),
    CAR_MASS(
            1500,
            "kg",
            "mean kerb weight of cars road-tested in 2016, 1,553 kg: a motoring weekly's survey, July 2024"),
    CAR_POWER(130, "hp", "from memory: a family car"),
    ROLLER_COASTER(4.5, "g", "one park's ratings, 3.0 to 4.8 g: ool.co.uk/blog/g-forces-for-the-holiday"),
    MATCH_HEAD(0.25, "degrees", "from memory: 3 mm at an arm's length of 65 cm"),
    FULL_MOON(0.5, "degrees", "from memory: about 0.52 degrees"),
    LITTLE_FINGER(1, "degrees", "width at arm's length: astronomyclub.org/obs/otb/4-Angular.htm"),
    POUND_COIN(2, "degrees", "23.43 mm (royalmint.com) at an arm's length of 65 cm, which is from memory"),
    THREE_FINGERS(5, "degrees", "width at arm's length: astronomyclub.org/obs/otb/4-Angular.htm"),
    FIST_WIDTH(10, "degrees", "width at arm's length: astronomyclub.org/obs/otb/4-Angular.htm"),
    OPEN_HAND(20, "degrees", "thumb to little finger at arm's length: astronomyclub.org/obs/otb/4-Angular.htm");

    private final double value;
    private final String unit;
    private final String source;

    Everyday(double value, String unit, String source) {
        this.value = value;
        this.unit = unit;
        this.source = source;
    }

    public double value() {
        return value;
    }

    String unit() {
        return unit;
    }

    String source() {
        return source;
    }
}
