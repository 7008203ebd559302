/*
 * The same steady solve as the Java benchmark: three sections in series, Colebrook-White by the same kind
 * of iteration, one nozzle, flow by a bracketed root. Prints solves a second and a checksum.
 * Build: cc -O3 -o steady steady.c -lm
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static const double G = 9.80665, NU = 1.307e-6;

static double friction(double re, double rr) {
    if (re < 2300) return 64 / re;
    double x = -2 * log10(rr / 3.7 + 5.74 / pow(re, 0.9));
    for (int i = 0; i < 3; i++) x = -2 * log10(rr / 3.7 + 2.51 * x / re);
    return 1 / (x * x);
}

static double excess(double q, double gross, const double *l, const double *d, const double *k, const double *loss,
                     double nozzle) {
    double head = gross;
    for (int i = 0; i < 3; i++) {
        double v = q / (M_PI / 4 * d[i] * d[i]);
        head -= (friction(v * d[i] / NU, k[i] / d[i]) * l[i] / d[i] + loss[i]) * v * v / (2 * G);
    }
    double vj = q / (M_PI / 4 * nozzle * nozzle);
    return head - vj * vj / (2 * G * 0.97 * 0.97);
}

int main(int argc, char **argv) {
    int rounds = argc > 1 ? atoi(argv[1]) : 300000;
    double l[3] = {2, 60, 58}, d[3] = {0.0504, 0.0548, 0.0504}, k[3] = {1e-5, 1e-5, 1e-5}, loss[3] = {0.24, 0.6, 0.8};
    double sum = 0;
    struct timespec a, b;
    for (int pass = 0; pass < 2; pass++) {
        clock_gettime(CLOCK_MONOTONIC, &a);
        for (int i = 0; i < rounds; i++) {
            double gross = 32 + 1e-6 * i, nozzle = 0.011;
            double lo = 1e-6, hi = 0.97 * M_PI / 4 * nozzle * nozzle * sqrt(2 * G * gross);
            double flo = excess(lo, gross, l, d, k, loss, nozzle), fhi = excess(hi, gross, l, d, k, loss, nozzle);
            double q = hi;
            int side = 0;
            for (int n = 0; n < 60; n++) { /* Illinois */
                q = (lo * fhi - hi * flo) / (fhi - flo);
                double f = excess(q, gross, l, d, k, loss, nozzle);
                if (fabs(f) < 1e-10 * gross) break;
                if (f > 0) {
                    lo = q; flo = f;
                    if (side == 1) fhi /= 2;
                    side = 1;
                } else {
                    hi = q; fhi = f;
                    if (side == -1) flo /= 2;
                    side = -1;
                }
            }
            sum += q;
        }
        clock_gettime(CLOCK_MONOTONIC, &b);
    }
    double s = (b.tv_sec - a.tv_sec) + (b.tv_nsec - a.tv_nsec) / 1e9;
    printf("%.0f solves a second, mean flow %.9g m3/s\n", rounds / s, sum / (2.0 * rounds));
    return 0;
}
