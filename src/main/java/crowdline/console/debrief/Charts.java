package crowdline.console.debrief;

/** The charts of a debrief: of the day, then of each act flown. Each is made when it is asked for. */
public interface Charts {
    /** Where nothing was flown. */
    Charts NONE = new Charts() {
        @Override
        public int count() {
            return 0;
        }

        @Override
        public ChartView chart(int number) {
            throw new IndexOutOfBoundsException(number);
        }
    };

    /** How many there are. */
    int count();

    /** One of them, by its number from 0. */
    ChartView chart(int number);
}
