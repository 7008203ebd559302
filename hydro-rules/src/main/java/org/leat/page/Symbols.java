package org.leat.page;

/**
 * Symbols of a schematic around a place on its line, 34 units across. Electrical ones after IEC 60617 (from memory): rotating
 * machine, rectifier and inverter, fuse, circuit-breaker, switch, resistor, battery, socket outlet. Water has no such standard:
 * those are our own.
 */
enum Symbols {
    STREAM {
        @Override
        void draw(Drawing on, double x, double y) {
            for (double dy : new double[] {-9, 0, 9}) {
                on.path("M" + Drawing.pair(x - 16, y + dy) + "q4 -6 8 0t8 0t8 0t8 0", "symbol water-line");
            }
        }
    },
    SCREEN {
        @Override
        void draw(Drawing on, double x, double y) {
            on.rectangle(x - 15, y - 13, 30, 26, "symbol");
            for (double dx : new double[] {-9, -3, 3, 9}) {
                on.line(x + dx, y - 13, x + dx, y + 13, "symbol");
            }
        }
    },
    PIPE {
        @Override
        void draw(Drawing on, double x, double y) {
            on.rectangle(x - 7, y - 20, 14, 40, "symbol filled-water");
        }
    },
    NOZZLE {
        @Override
        void draw(Drawing on, double x, double y) {
            on.path(
                    "M" + Drawing.pair(x - 9, y - 15) + "h18l-6 18h-6ZM" + Drawing.pair(x, y + 3) + "v14",
                    "symbol filled-water");
        }
    },
    RUNNER {
        @Override
        void draw(Drawing on, double x, double y) {
            on.circle(x, y, 11, "symbol");
            on.circle(x, y, 2, "symbol");
            for (int i = 0; i < 8; i++) {
                double angle = i * Math.PI / 4;
                double out = 16;
                double cx = x + out * Math.cos(angle);
                double cy = y + out * Math.sin(angle);
                double tx = -Math.sin(angle) * 5;
                double ty = Math.cos(angle) * 5;
                on.path(
                        "M" + Drawing.pair(x + 11 * Math.cos(angle), y + 11 * Math.sin(angle)) + "Q"
                                + Drawing.pair(cx + tx, cy + ty) + " " + Drawing.pair(cx - tx / 2, cy - ty / 2),
                        "symbol");
            }
        }
    },
    GENERATOR {
        @Override
        void draw(Drawing on, double x, double y) {
            on.circle(x, y, 17, "symbol");
            on.text(x, y, "G", "sign mid");
            on.text(x, y + 12, "3\u223c", "sign mid");
        }
    },
    RECTIFIER {
        @Override
        void draw(Drawing on, double x, double y) {
            converter(on, x, y, "\u223c", "=");
        }
    },
    REGULATOR {
        @Override
        void draw(Drawing on, double x, double y) {
            converter(on, x, y, "=", "=");
        }
    },
    INVERTER {
        @Override
        void draw(Drawing on, double x, double y) {
            converter(on, x, y, "=", "\u223c");
        }
    },
    RESISTOR {
        @Override
        void draw(Drawing on, double x, double y) {
            on.rectangle(x - 17, y - 6, 34, 12, "symbol");
        }
    },
    BATTERY {
        @Override
        void draw(Drawing on, double x, double y) {
            on.rectangle(x - 17, y - 14, 34, 28, "ground");
            on.line(x - 17, y, x - 9, y, "symbol");
            on.line(x - 9, y - 14, x - 9, y + 14, "symbol");
            on.line(x - 3, y - 7, x - 3, y + 7, "symbol thick");
            on.line(x - 3, y, x + 4, y, "symbol dashed");
            on.line(x + 4, y - 14, x + 4, y + 14, "symbol");
            on.line(x + 10, y - 7, x + 10, y + 7, "symbol thick");
            on.line(x + 10, y, x + 17, y, "symbol");
        }
    },
    FUSE {
        @Override
        void draw(Drawing on, double x, double y) {
            on.rectangle(x - 5, y - 12, 10, 24, "symbol");
            on.line(x, y - 12, x, y + 12, "symbol");
        }
    },
    BREAKER {
        @Override
        void draw(Drawing on, double x, double y) {
            on.rectangle(x - 9, y - 11, 14, 22, "ground");
            on.path(
                    "M" + Drawing.pair(x, y + 11) + "l-9 -18M" + Drawing.pair(x - 4, y - 15) + "l8 8m0 -8l-8 8",
                    "symbol");
        }
    },
    SWITCH {
        @Override
        void draw(Drawing on, double x, double y) {
            on.rectangle(x - 9, y - 11, 14, 22, "ground");
            on.path("M" + Drawing.pair(x, y + 11) + "l-9 -18M" + Drawing.pair(x - 4, y - 11) + "h8", "symbol");
        }
    },
    CABLE {
        @Override
        void draw(Drawing on, double x, double y) {
            on.path("M" + Drawing.pair(x - 5, y + 3) + "l10 -6", "symbol");
        }
    },
    SOCKET {
        @Override
        void draw(Drawing on, double x, double y) {
            on.path(
                    "M" + Drawing.pair(x - 12, y + 8) + "a12 12 0 0 1 24 0M" + Drawing.pair(x, y - 4) + "v-8",
                    "symbol");
        }
    };

    abstract void draw(Drawing on, double x, double y);

    private static void converter(Drawing on, double x, double y, String in, String out) {
        on.rectangle(x - 17, y - 17, 34, 34, "symbol");
        on.line(x - 17, y + 17, x + 17, y - 17, "symbol");
        on.text(x - 8, y - 4, in, "sign mid");
        on.text(x + 8, y + 12, out, "sign mid");
    }
}
