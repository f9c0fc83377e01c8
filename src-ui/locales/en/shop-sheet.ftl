# The shop sheet: the cabinet on paper.

shop-title = Shop sheet
shop-open = Shop sheet and templates, to print
shop-print = Print
shop-no-templates = Leave the templates out
shop-with-templates = Put the templates in
shop-back = Back to the card
shop-paper = Fits A4 and US Letter. For the templates, print at 100 %, not fitted to the page.
shop-problems = There is something on the card that cannot be used yet: the sheet can be made once it is put right there.
shop-job = Job
shop-date = Date
shop-carcass = Carcass { $size }
shop-scale = { $name }, scale 1 : { $scale }
shop-drawings = Drawings
shop-faces = Parts, face by face
shop-faces-corner = The corner that everything is measured from is marked.
shop-column-count = No.
shop-column-size = Along the grain × across
shop-column-edging = Edging
shop-edges-long = { $count ->
    [one] 1 long edge
   *[other] { $count } long edges
}
shop-edges-short = { $count ->
    [one] 1 short edge
   *[other] { $count } short edges
}
shop-board = { $thick } { $board }, { $material }
shop-sheets = Sheets, parts { $kerf } apart for the blade
shop-no-layout = The parts could not be laid on sheets: see the sheet layout card.
shop-left-out = Not on any sheet: { $name } × { $count }. { $why }
shop-work = Order of work
shop-row = Template: row of holes ⌀ { $hole }, { $edge } from the edge
shop-cup = Template: hinge cup
shop-page = { $name }, page { $page } of { $pages }
shop-measure = Measure the bar before use. Printed at 100 % it is 100 mm long, or 4 in; fitted to the page it is not, and the holes would be wrong.
shop-cup-use = { $doors }: thick line on the hinge edge, the line across it on the mark of each cup.
shop-without = No template for the row of holes ⌀ { $hole }, { $edge } from the edge ({ $uses }): it lies farther from there than a page is wide. Mark it by the hole tables.
shop-row-use = Thick line on the edge, the thick end on the board's lower end; figures are from there. Strips are joined at lines of the same letter. For the other hand turn the paper over.
shop-use-front = { $part }, { $face }: front edge
shop-use-rear = { $part }, { $face }: rear edge
