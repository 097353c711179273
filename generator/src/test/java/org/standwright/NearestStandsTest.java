package org.standwright;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stands that cannot be built for their height, plan, top, support or sheets: each message names a value that then builds. */
class NearestStandsTest {
    /** The notches of the drill press stand are as deep as its lowest boxes take: a deeper one has a refusal of its own. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/workingHeight":{"kind":"elbow","elbow":"1500 mm","work":"precise"},"/carcass/sheet":{"preset":"birch-18","name":"short birch","length":"1250 mm"}} | /workingHeight | height is (.+?), | /workingHeight
        plain | {"/workingHeight":{"kind":"beside","surface":"bench","surfaceHeight":"400 mm"}} | /workingHeight | height is (.+?)[.,] | /workingHeight
        plain | {"/workingHeight":{"kind":"beside","surface":"bench","surfaceHeight":"900 mm","fall":"3 mm"}} | /workingHeight | '"shims": (\\{.*?\\})' | /place/shims
        plain | {"/workingHeight":{"kind":"beside","surface":"bench","surfaceHeight":"900 mm","fall":"3 mm"},"/place/shims":{"least":"2 mm","usual":"3 mm","most":"4 mm"}} | /workingHeight | '"shims": (\\{.*?\\})' | /place/shims
        plain | {"/workingHeight":{"kind":"beside","surface":"bench","surfaceHeight":"900 mm","fall":"30 mm"},"/support":{"kind":"levelers","leveler":"leveler-m10"}} | /workingHeight | '"shims": (\\{.*?\\})' | /place/shims
        plain | {"/workingHeight":"400 mm","/machine/reference":{"kind":"movable-table","height":"150 mm","lowest":"50 mm","highest":"250 mm"}} | /workingHeight | height is (.+?)\\. | /workingHeight
        plain | {"/workingHeight":"400 mm","/machine/reference":{"kind":"spindle","height":"150 mm"}} | /workingHeight | height is (.+?)\\. | /workingHeight
        plain | {"/workingHeight":"400 mm","/layout":"mirrored"} | /workingHeight | height is (.+?)\\. | /workingHeight
        plain | {"/workingHeight":"2400 mm","/carcass/sheet":{"preset":"birch-18","name":"short","length":"1500 mm"}} | /workingHeight | height is (.+?), | /workingHeight
        drill | {"/workingHeight":"30 in","/drawers/grip":{"kind":"notch","width":"3 in","depth":"5/8 in"}} | /workingHeight | height is (.+?)\\. | /workingHeight
        plain | {"/workingHeight":{"kind":"elbow","elbow":"600 mm","work":"heavy"}} | /workingHeight | height is (.+?)\\. | /workingHeight
        drill | {"/workingHeight":"24 in","/drawers/grip":{"kind":"notch","width":"3 in","depth":"5/8 in"}} | /workingHeight | height is (.+? in)\\. | /workingHeight
        """)
    void namesAWorkingHeightOrShims(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/place/margins":{"left":"100 mm","right":"100 mm"}} | /place/margins | right margin (.+?)\\. | /place/margins/right
        plain | {"/place/margins":{"left":"100 mm","right":"100 mm"}} | /place/margins | left margin (.+?)\\. | /place/margins/left
        plain | {"/place/margins":{"front":"100 mm","back":"100 mm"}} | /place/margins | plan (.+?) deep | /plan/depth
        plain | {"/place/margins":{"left":"100 mm","right":"100 mm"},"/layout":"mirrored"} | /place/margins | right margin (.+?)\\. | /place/margins/right
        plain | {"/place/margins":{"left":"100 mm","right":"100 mm"},"/place/turn":90} | /place/margins | right margin (.+?)\\. | /place/margins/right
        plain | {"/plan/depth":"270 mm","/support":{"kind":"none"},"/drawers/mount":"inset"} | /plan/depth | Make the plan (.+?) deep | /plan/depth
        plain | {"/plan":{},"/place/margins":{"left":"40 mm","right":"-300 mm","front":"40 mm","back":"240 mm"},"/bays/0/width":null} | /place/margins | right margin (\\S+ mm) | /place/margins/right
        plain | {"/plan":{},"/place/margins":{"left":"40 mm","right":"-300 mm","front":"40 mm","back":"240 mm"}} | /place/margins | right margin (\\S+ mm) | /place/margins/right
        plain | {"/plan":{"depth":"560 mm"},"/place/margins":{"left":"-290 mm","right":"-290 mm"}} | /place/margins | right margin (\\S+ mm) | /place/margins/right
        plain | {"/plan":{"width":"720 mm"},"/machine/reference":{"kind":"worktop","height":0}} | /plan/depth | is: (\\S+ mm) or more | /plan/depth
        plain | {"/plan":{"depth":"560 mm"},"/machine/reference":{"kind":"worktop","height":0}} | /plan/width | is: (\\S+ mm) or more | /plan/width
        plain | {"/plan":{"width":"720 mm"},"/place/margins":{"front":"-20 mm","back":"-20 mm"}} | /place/margins | back margin (\\S+ mm) | /place/margins/back
        """)
    void namesAPlanOrAMargin(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        planer | {"/place/margins":{"left":"0 mm"}} | /place/margins | left (\\S+ mm) | /place/margins/left
        planer | {"/place/margins":{"left":"0 mm","front":"0 mm"}} | /place/margins | left (\\S+ mm) | /place/margins/left
        planer | {"/place/margins":{"right":"0 mm"}} | /place/margins | right (\\S+ mm) | /place/margins/right
        planer | {"/place/margins":{"right":"0 mm"},"/layout":"mirrored"} | /place/margins | right (\\S+ mm) | /place/margins/right
        planer | {"/plan":{},"/place/margins":{"left":"0 mm","right":"100 mm","front":"100 mm","back":"100 mm"}} | /place/margins | left (\\S+ mm), right (\\S+ mm) | /place/margins/left /place/margins/right
        planer | {"/machine/mounting":{"flange":"3 mm","bolt":"8 mm","origin":{"x":"260 mm","y":"40 mm"},"holes":[{"x":0,"y":0},{"x":"100 mm","y":0}]}} | /place/margins | left (\\S+ mm) | /place/margins/left
        planer | {"/place/margins":{"back":"-60 mm"}} | /place/margins | back (\\S+ mm) | /place/margins/back
        planer | {"/place/turn":90,"/place/margins":{"front":"-60 mm"}} | /place/margins | front (\\S+ mm) | /place/margins/front
        planer | {"/bays/0/contents/0/fronts":["85 mm"]} | /bays/0/contents | this front (\\S+ mm) high | /bays/0/contents/0/fronts/0
        planer | {"/bays/1/contents/0/front":"77 mm"} | /bays/1/contents | this front (\\S+ mm) high | /bays/1/contents/0/front
        drill | {"/place/margins":{"left":"0 in"}} | /place/margins | left (\\S+ in) | /place/margins/left
        planer | {"/drawers/hang":{"kind":"runners","bar":"bar-20x20"},"/bays/0/contents/0/fronts":["104 mm"],"/bays/1/contents/0/front":"140 mm"} | /bays/0/contents | this front (\\S+ mm) high | /bays/0/contents/0/fronts/0
        """)
    void namesAPlaceOfTheMachineOrAFrontBelowItsBolts(
            String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/cutouts":[{"kind":"round","use":"hose","in":"worktop","x":"409 mm","y":"300 mm","diameter":"60 mm"}]} | /cutouts/0 | x (.+?), y (.+?)\\. | /cutouts/0/x /cutouts/0/y
        plain | {"/cutouts":[{"kind":"round","use":"hose","in":"worktop","x":"10 mm","y":"300 mm","diameter":"60 mm"}]} | /cutouts/0 | x (.+?), y (.+?)\\. | /cutouts/0/x /cutouts/0/y
        plain | {"/cutouts":[{"kind":"round","use":"hose","in":"back","x":"409 mm","y":"300 mm","diameter":"60 mm"}],"/layout":"mirrored"} | /cutouts/0 | x (.+?), y (.+?)\\. | /cutouts/0/x /cutouts/0/y
        planer | {"/cutouts":[{"kind":"round","use":"hose","in":"worktop","x":"110 mm","y":"110 mm","diameter":"60 mm"}]} | /cutouts/0 | x (.+?), y (.+?)\\. | /cutouts/0/x /cutouts/0/y
        plain | {"/cutouts":[{"kind":"round","use":"a","in":"worktop","x":"100 mm","y":"300 mm","diameter":"60 mm"},{"kind":"rectangular","use":"b","in":"worktop","x":"130 mm","y":"300 mm","width":"40 mm","height":"20 mm","radius":"5 mm"}]} | /cutouts/1 | x (.+?), y (.+?)\\. | /cutouts/1/x /cutouts/1/y
        plain | {"/cutouts":[{"kind":"rectangular","use":"b","in":"worktop","x":"200 mm","y":"300 mm","width":"40 mm","height":"20 mm","radius":"15 mm"}]} | /cutouts/0/radius | radius (.+?) or less | /cutouts/0/radius
        plain | {"/cutouts":[{"kind":"round","use":"a","in":"back","x":"200 mm","y":"300 mm","diameter":"396 mm"}],"/workingHeight":"700 mm"} | /cutouts/0 | diameter (\\S+ mm)\\. | /cutouts/0/diameter
        plain | {"/cutouts":[{"kind":"rectangular","use":"a","in":"worktop","x":"200 mm","y":"300 mm","width":"700 mm","height":"100 mm"}]} | /cutouts/0 | Make it (\\S+ mm) wide | /cutouts/0/width
        plain | {"/cutouts":[{"kind":"rectangular","use":"a","in":"worktop","x":"200 mm","y":"300 mm","width":"200 mm","height":"600 mm"}]} | /cutouts/0 | Make it (\\S+ mm) high | /cutouts/0/height
        plain | {"/cutouts":[{"kind":"round","use":"hose","in":"back","x":"100 mm","y":"10 mm","diameter":"60 mm"}]} | /cutouts/0 | centre at x (\\S+ mm), y (\\S+ mm)\\. | /cutouts/0/x /cutouts/0/y
        """)
    void namesAPlaceOrASizeOfACutout(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/worktop/plate":{"name":"plate","x":"200 mm","y":"300 mm","width":"150 mm","depth":"100 mm","thickness":"6 mm","radius":"60 mm"},"/bays/0/contents":[{"kind":"open"}]} | /worktop/plate/radius | radius (.+?) or less | /worktop/plate/radius
        plain | {"/worktop/plate":{"name":"plate","x":"360 mm","y":"300 mm","width":"298 mm","depth":"235 mm","thickness":"6 mm"},"/bays/0/contents":[{"kind":"open"}]} | /worktop/plate | x (.+?), y (.+?)\\. | /worktop/plate/x /worktop/plate/y
        plain | {"/worktop/plate":{"name":"plate","x":"560 mm","y":"300 mm","width":"298 mm","depth":"235 mm","thickness":"6 mm"},"/bays/0/contents":[{"kind":"open"}]} | /worktop/plate | x (.+?), y (.+?)\\. | /worktop/plate/x /worktop/plate/y
        plain | {"/worktop/plate":{"name":"plate","x":"550 mm","y":"300 mm","width":"228 mm","depth":"235 mm","thickness":"6 mm"},"/bays/0/contents":[{"kind":"open"}]} | /worktop/plate | x (.+?), y (.+?)\\. | /worktop/plate/x /worktop/plate/y
        plain | {"/worktop/plate":{"name":"plate","x":"550 mm","y":"300 mm","width":"228 mm","depth":"235 mm","thickness":"6 mm"},"/bays/0/contents":[{"kind":"open"}],"/layout":"mirrored"} | /worktop/plate | x (.+?), y (.+?)\\. | /worktop/plate/x /worktop/plate/y
        plain | {"/worktop/plate":{"name":"plate","x":"200 mm","y":"300 mm","width":"298 mm","depth":"235 mm","thickness":"16 mm"},"/bays/0/contents":[{"kind":"open"}]} | /worktop/plate | or a plate of (\\S+ mm) or less | /worktop/plate/thickness
        plain | {"/worktop/sheet":{"preset":"birch-18"},"/carcass/sheet":{"preset":"birch-18","name":"other birch"},"/drawers/front":{"preset":"birch-18","name":"other birch"},"/worktop/plate":{"name":"plate","x":"200 mm","y":"300 mm","width":"298 mm","depth":"235 mm","thickness":"16 mm"},"/bays/0/contents":[{"kind":"open"}]} | /worktop/plate | sheet of (\\S+ mm) or more | /worktop/sheet/thickness
        plain | {"/worktop/plate":{"name":"plate","x":"200 mm","y":"300 mm","width":"150 mm","depth":"100 mm","thickness":"6 mm","ledge":"60 mm"},"/bays/0/contents":[{"kind":"open"}]} | /worktop/plate/ledge | ledge (\\S+ mm) or less | /worktop/plate/ledge
        plain | {"/machine":"router-in-plate","/workingHeight":"1000 mm","/worktop/plate":{"name":"plate","x":"200 mm","y":"130 mm","width":"298 mm","depth":"235 mm","thickness":"6 mm"},"/bays/0/contents":[{"kind":"open","height":"250 mm"},{"kind":"equal-drawers","count":2}]} | /worktop/plate | centre at x (\\S+ mm), y (\\S+ mm)\\. | /worktop/plate/x /worktop/plate/y
        """)
    void namesAPlaceOrASizeOfAPlate(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/support":{"kind":"casters","caster":"caster-100","others":{"preset":"caster-100","height":"130 mm"}}} | /support/others | that are (.+?) high | /support/others/height
        plain | {"/support":{"kind":"casters","caster":{"preset":"caster-100","bolt":"10 mm"}}} | /support/caster | bolt, (.+?) at most | /support/caster/bolt
        plain | {"/support":{"kind":"levelers","leveler":"leveler-m10"},"/plan/width":"152 mm","/bays":[{"contents":[{"kind":"open"}]}]} | /support/bed | the plan (\\S+ mm) wide | /plan/width
        plain | {"/support":{"kind":"levelers","leveler":"leveler-m10"},"/plan/width":"152 mm","/bays":[{"contents":[{"kind":"open"}]}]} | /support/bed | Use a (\\S+?)\\. | /support/bed
        plain | {"/support":{"kind":"levelers","leveler":{"preset":"leveler-m10","nutFlange":"80 mm"}}} | /support/leveler | flange (\\S+ mm) or less | /support/leveler/nutFlange
        plain | {"/plan/depth":"290 mm","/support":{"kind":"plinth","height":"90 mm","toeSpace":"190 mm"}} | /support/toeSpace | Make it (.+?) or less | /support/toeSpace
        plain | {"/plan/depth":"290 mm","/support":{"kind":"plinth","height":"90 mm","toeSpace":"190 mm"}} | /support/toeSpace | the plan (\\S+ mm) deep\\. | /plan/depth
        """)
    void namesWhatTheSupportTakes(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/carcass/housing":"0 mm"} | /carcass/housing | be (.+?) to | /carcass/housing
        plain | {"/carcass/housing":"14 mm"} | /carcass/housing | to (.+?) deep, | /carcass/housing
        plain | {"/support":{"kind":"casters","caster":"caster-100"},"/carcass/sheet":{"preset":"birch-12"},"/worktop/sheet":{"preset":"birch-18"}} | /carcass/sheet | sheet of (.+?) or more | /carcass/sheet/thickness
        plain | {"/support":{"kind":"levelers","leveler":"leveler-m10","bed":"doubled-bottom"},"/carcass/sheet":{"preset":"birch-15"}} | /carcass/sheet | sheet of (.+?) or more | /carcass/sheet/thickness
        plain | {"/carcass/housing":"1 mm"} | /carcass/housing | Make it (.+?) deep\\. | /carcass/housing
        drill | {"/carcass/housing":"5/8 in"} | /carcass/housing | Make it (.+?) deep\\. | /carcass/housing
        plain | {"/carcass/sheet":{"preset":"birch-9"},"/support":{"kind":"none"},"/bays":[{"contents":[{"kind":"open"},{"kind":"open"}]},{"contents":[{"kind":"open"}]}],"/carcass/housing":"3 mm"} | /carcass/sheet | sheet of (.+?) or more | /carcass/sheet/thickness
        plain | {"/carcass/sheet":{"preset":"birch-9","thickness":"7 mm"},"/support":{"kind":"none"},"/bays":[{"contents":[{"kind":"open"}]}]} | /carcass/sheet | sheet of (.+?) or more | /carcass/sheet/thickness
        drill | {"/carcass/sheet":{"preset":"ply-23-32"},"/carcass/housing":"5/8 in"} | /carcass/housing | Make it (.+? in) deep\\. | /carcass/housing
        """)
    void namesAHousingOrASheetOfTheCarcass(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/plan/depth":"1300 mm"} | /plan/depth | Make the plan (\\S+ mm) deep | /plan/depth
        plain | {"/plan/width":"1900 mm","/carcass/back":{"preset":"birch-6.5","name":"small board","length":"1000 mm","width":"800 mm"}} | /plan/width | Make the plan (\\S+ mm) wide | /plan/width
        plain | {"/drawers/front":{"preset":"birch-18","name":"small front","length":"300 mm","width":"300 mm"}} | /plan | sheet (\\S+ mm) long and (\\S+ mm) wide | /drawers/front/length /drawers/front/width
        plain | {"/worktop/sheet":{"preset":"birch-18","name":"small top","length":"1200 mm","width":"500 mm"}} | /plan/depth | Make the plan (\\S+ mm) deep | /plan/depth
        plain | {"/bays":[{"contents":[{"kind":"equal-drawers","count":3}]}],"/drawers/front":{"preset":"birch-18","name":"small front","length":"600 mm","width":"300 mm"}} | /plan/width | Make the plan (\\S+ mm) wide | /plan/width
        """)
    void namesAPlanOrASheetWhereAPartIsLargerThanItsSheet(
            String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }
}
