package plumbleaf.documents.drawing;

/**
 * How far each letter of our typefaces moves the pen, in 2048ths of the size. Copied by a program out of the font files that the
 * plotters embed, and compared with them by a test; here so that lettering is measured without a font library, in a browser too.
 */
final class AdvanceWidths {
    static final double UNITS = 2048;

    /** First code point of a row, then the widths of it and its followers. */
    private static final String INTER_REGULAR =
            "20:576,589,954,1297,1314,2011,1319,614,747,747,1026,1355,590,942,590,738,1292,833,1249,1265,1323,121"
                    + "5,1270,1159,1267,1270,590,618,1355,1355,1355,1047,1978,1413,1340,1496,1478,1231,1209,1528,1522,550,1"
                    + "169,1376,1158,1850,1543,1566,1308,1566,1318,1314,1322,1524,1413,2018,1397,1390,1288,747,738,747,965,"
                    + "934,661,1150,1254,1170,1254,1194,758,1256,1211,496,496,1124,496,1794,1210,1228,1254,1254,771,1081,67"
                    + "0,1211,1151,1676,1118,1151,1131,873,681,873,1355;a0:576,589,1170,1251,1484,1126,553,1164,1210,1872,9"
                    + "29,1193,1355;ae:1364,978,933,1355,905,913,661,1200,1234,590,549,623,988,1193,1643,1735,1806,1047,141"
                    + "3,1413,1413,1413,1413,1413,2035,1496,1231,1231,1231,1231,550,550,550,550,1505,1543,1566,1566,1566,15"
                    + "66,1566,1355,1566,1524,1524,1524,1524,1390,1302,1262,1150,1150,1150,1150,1150,1150,1879,1170,1194,11"
                    + "94,1194,1194,496,496,496,496,1193,1210,1228,1228,1228,1228,1228,1355,1228,1211,1211,1211,1211,1151,1"
                    + "254,1151;394:1395;3a3:1411;3a9:1577;3b1:1360,1220,1151,1196;3b7:1211,1272;3ba:1076,1314,1200;3c0:123"
                    + "9,1254;3c3:1278,954;3c6:1476;3c8:1593,1648;2013:1024,2048;2018:534,534;201c:902,902;2022:1152;2026:1"
                    + "770;2032:456,906;2080:941,623,905,913,942;215b:1755,1918,1928,1681;2190:1954,1708,1954,1708;2212:135"
                    + "5;221a:1289;2248:1355;2260:1355;2264:1355,1355;25a0:1872,1872;25b2:2070,2070;25cb:1872;25cf:1872;271"
                    + "3:1811";

    private static final String INTER_SEMIBOLD =
            "20:516,658,1071,1318,1332,2057,1357,667,764,764,1105,1378,653,953,653,776,1351,866,1276,1303,1364,12"
                    + "54,1310,1180,1311,1310,653,674,1378,1378,1378,1113,2046,1490,1350,1509,1479,1240,1204,1534,1527,567,"
                    + "1187,1440,1158,1889,1555,1574,1321,1583,1336,1332,1352,1507,1490,2089,1474,1461,1336,764,776,764,986"
                    + ",961,719,1176,1278,1193,1278,1211,796,1281,1254,536,536,1166,536,1844,1253,1247,1278,1278,813,1125,7"
                    + "23,1254,1202,1719,1165,1205,1159,931,735,931,1378;a0:516,658,1193,1289,1534,1154,647,1164,1253,1872,"
                    + "943,1299,1378;ae:1359,925,938,1378,929,949,719,1258,1229,653,680,663,998,1299,1702,1781,1858,1113,14"
                    + "90,1490,1490,1490,1490,1490,2075,1509,1240,1240,1240,1240,567,567,567,567,1539,1555,1574,1574,1574,1"
                    + "574,1574,1378,1574,1507,1507,1507,1507,1461,1347,1318,1176,1176,1176,1176,1176,1176,1869,1193,1211,1"
                    + "211,1211,1211,536,536,536,536,1216,1253,1247,1247,1247,1247,1247,1378,1247,1254,1254,1254,1254,1205,"
                    + "1278,1205;394:1479;3a3:1417;3a9:1593;3b1:1401,1239,1202,1225;3b7:1254,1280;3ba:1160,1370,1258;3c0:12"
                    + "85,1278;3c3:1315,1014;3c6:1582;3c8:1665,1688;2013:1024,2048;2018:602,602;201c:1038,1027;2022:1031;20"
                    + "26:1958;2032:527,1049;2080:990,663,929,949,979;215b:1816,1972,1996,1739;2190:1954,1805,1954,1805;221"
                    + "2:1378;221a:1343;2248:1378;2260:1378;2264:1378,1378;25a0:1872,1872;25b2:2118,2118;25cb:1872;25cf:187"
                    + "2;2713:1808";

    /** Only what Inter does not have. */
    private static final String DEJAVU_SANS = "ad:739;2220:1836;22a5:1784;2300:1233;25cc:1787;2610:1836,1836";

    private static final int[] REGULAR = table(INTER_REGULAR);
    private static final int[] SEMIBOLD = table(INTER_SEMIBOLD);
    private static final int[] FALLBACK = table(DEJAVU_SANS);

    private AdvanceWidths() {}

    /** Whether a typeface has a letter. */
    static boolean has(Typeface face, char letter) {
        return of(face, letter) > 0;
    }

    /** How far it moves the pen; 0 where the typeface has no such letter. */
    static int of(Typeface face, char letter) {
        int[] widths = switch (face) {
            case INTER_REGULAR -> REGULAR;
            case INTER_SEMIBOLD -> SEMIBOLD;
            case DEJAVU_SANS -> FALLBACK;
        };
        return letter < widths.length ? widths[letter] : 0;
    }

    /** By code point, as far as the last row goes. */
    private static int[] table(String rows) {
        String last = rows.substring(rows.lastIndexOf(';') + 1);
        int[] widths = new int[code(last) + last.length()];
        for (String row : rows.split(";", -1)) {
            int code = code(row);
            for (String width : row.substring(row.indexOf(':') + 1).split(",", -1))
                widths[code++] = Integer.parseInt(width);
        }
        return widths;
    }

    private static int code(String row) {
        return Integer.parseInt(row.substring(0, row.indexOf(':')), 16);
    }
}
