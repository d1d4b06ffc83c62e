/**
 * How a report looks on paper. The template is fixed text: everything that varies comes in as JSON through
 * `sys.inputs` and is set as plain strings, so that no data is ever read as markup or code.
 */
export const typstTemplate = String.raw`
#let doc = json(bytes(sys.inputs.doc))
#let ink = luma(7%)
#let grey = luma(35%)
#let rule = luma(70%)
#let large = doc.kind == "job-pack"
#let base = if large { 12pt } else { 9pt }
#let side = 17mm

#let made = doc.made
#set document(title: doc.title, author: doc.author, description: doc.subtitle,
  date: datetime(year: made.at(0), month: made.at(1), day: made.at(2), hour: made.at(3), minute: made.at(4), second: made.at(5)))
#set text(font: "Arimo", size: base, fill: ink, lang: doc.lang, region: doc.region, fallback: false, hyphenate: false, ligatures: false)
#set par(leading: 0.62em, spacing: 0.9em, justify: false)
// Every style a page is set in knows its footer: were the footer to hold the document, no two documents would share a laid line.
#let foot = state("foot", (line: "", page: "", of: ""))
#set page(paper: if doc.paper == "a4" { "a4" } else { "us-letter" }, margin: (x: side, top: 17mm, bottom: 18mm),
  footer: context [
    #set text(size: 7.5pt, fill: grey)
    #line(length: 100%, stroke: 0.4pt + rule)
    #v(-0.6em)
    #grid(columns: (1fr, auto), foot.final().line,
      [#foot.final().page #counter(page).display() #foot.final().of #counter(page).final().first()])
  ])
#set heading(numbering: none)
#show heading.where(level: 1): it => block(width: 100%, above: 1.9em, below: 0.9em, sticky: true,
  stroke: (bottom: 0.7pt + ink), inset: (bottom: 0.35em), text(size: if large { 20pt } else { 13pt }, weight: "bold", it.body))
#show heading.where(level: 2): it => block(width: 100%, above: 1.5em, below: 0.7em, sticky: true,
  text(size: if large { 14pt } else { 10.5pt }, weight: "bold", it.body))
#set table(stroke: none, inset: (x: 0.4em, top: 0.45em, bottom: 0.5em), align: left)
#let report = doc.kind == "estimate-report"
#show title: set text(size: if large { 20pt } else if report { 15pt } else { 20pt }, weight: "bold")
#show title: set block(above: 0pt, below: 0.6em)
#set table.cell(breakable: false)
#set list(marker: [–], body-indent: 0.6em, spacing: 0.7em)
#set figure(gap: 0.5em)
#set figure.caption(separator: none)
#show figure.caption: it => block(width: 100%, sticky: it.kind == table, align(left, text(weight: "bold", size: 0.95em, it.body)))
#show figure.where(kind: table): set figure.caption(position: top)
#show figure.where(kind: table): set block(breakable: true)
#show figure.where(kind: table): it => block(width: 100%, above: if large { 0.8em } else { 1.1em }, below: if large { 1em } else { 1.4em }, align(left, it))
#show figure.where(kind: image): it => block(above: 1.1em, below: 1.3em, breakable: false, it)

#let side-of(column) = if column.align == "end" { right } else { left }
#let width-of(column) = if "share" in column { column.share * 1fr } else if "widthEm" in column { (column.widthEm + 0.85) * 1em } else { auto }
#let small(body) = text(size: 0.86em, fill: grey, body)

#let strong-text(cell) = text(weight: "bold", cell)

#let cells-of(columns, row, note-at) = {
  let strong = row.at("emphasis", default: none)
  let ground = if strong == "fails" or strong == "hold" { luma(92%) } else { none }
  row.cells.enumerate().map(((index, cell)) => {
    let shown = if strong == none { cell } else { strong-text(cell) }
    let noted = if index == note-at and "note" in row { [#shown #linebreak() #small(row.note)] } else { shown }
    let rest = if index == row.cells.len() - 1 { columns.len() - index } else { 1 }
    if rest > 1 { table.cell(colspan: rest, noted) }
    else if strong == none { noted }
    else { table.cell(fill: ground, stroke: (bottom: 0.3pt + rule, top: if strong == "total" { 0.7pt + ink } else { none }), noted) }
  })
}

// A cell above and below its text.
#let cell-insets = (wide: (top: 0.45em, bottom: 0.5em), dense: (top: 0.3em, bottom: 0.32em), close: (top: 0.28em, bottom: 0.32em))

#let render-table(b, close) = {
  let insets = cell-insets.at(if b.at("isDense", default: false) { "dense" } else if close { "close" } else { "wide" })
  figure(kind: table, supplement: none, caption: if b.caption == "" { none } else { b.caption },
    {
      set text(size: b.sizePt * 1pt)
      table(
        columns: b.columns.map(width-of),
        rows: (auto, ..b.rowsEm.map(text => if text == none { auto } else { text * 1em + insets.top + insets.bottom })),
        inset: (x: 0.4em, ..insets),
        align: b.columns.map(side-of),
        stroke: (bottom: 0.3pt + rule),
        table.header(..b.columns.map(column => table.cell(align: side-of(column) + bottom, stroke: (bottom: 0.9pt + ink), text(weight: "bold", column.title)))),
        ..b.rows.map(row => cells-of(b.columns, row, b.noteAt)).flatten(),
      )
    })
}

#let pairs(b) = figure(kind: table, supplement: none, caption: none,
  table(columns: (auto, 1fr, auto, 1fr),
    ..b.rows.map(row => (
      table.cell(stroke: (bottom: 0.3pt + rule), text(fill: grey, row.name)),
      table.cell(stroke: (bottom: 0.3pt + rule), row.value),
    )).flatten()))

#let facts(b, close) = if b.at("across", default: 1) == 2 { pairs(b) } else if close { figure(kind: table, supplement: none, caption: none,
  table(columns: (auto, 1fr),
    ..b.rows.map(row => (
      table.cell(stroke: (bottom: 0.3pt + rule), text(fill: grey, row.name)),
      table.cell(stroke: (bottom: 0.3pt + rule), if b.at("isStrong", default: false) { strong-text(row.value) } else { row.value }),
    )).flatten())) } else { figure(kind: table, supplement: none, caption: none,
  table(columns: (1fr, 1.6fr),
    ..b.rows.map(row => (
      table.cell(stroke: (bottom: 0.3pt + rule), text(fill: grey, row.name)),
      table.cell(stroke: (bottom: 0.3pt + rule), text(weight: "bold", row.value)),
    )).flatten())) }

#let picture(b) = {
  let art = image(bytes(b.svg), format: "svg", width: b.widthMm * 1mm, height: b.heightMm * 1mm, alt: b.alt)
  figure(kind: image, supplement: none, caption: if b.caption == "" { none } else { b.caption }, alt: b.alt, art)
}

#let photograph(b) = figure(kind: image, supplement: none, caption: b.caption, alt: b.caption,
  image(b.file, width: b.widthMm * 1mm, height: b.heightMm * 1mm, alt: b.caption))

#let bar-of = (danger: 3pt + ink, warning: (paint: ink, thickness: 3pt, dash: "densely-dashed"), caution: (paint: grey, thickness: 3pt, dash: "dotted"), note: 1pt + grey)

#let callout(b) = block(width: 100%, breakable: false, above: if large { 0.4em } else { 0.8em }, below: if large { 0.4em } else { 0.8em }, fill: luma(96%), stroke: (left: bar-of.at(b.severity)), inset: (left: 0.9em, right: 0.6em, y: 0.6em),
  [#set text(size: 10.5pt) if large
  #text(weight: "bold", b.label + ".") #b.text #if b.small != "" { linebreak(); small(b.small) }])

#let cards(b) = grid(columns: (1fr, 1fr), column-gutter: 6mm, row-gutter: 4mm, ..b.figures.map(card => block(breakable: false, picture(card))))

#let signature(b) = block(width: 100%, breakable: false, above: 2.2em,
  grid(columns: (1fr, 1fr), column-gutter: 2em, row-gutter: 2.6em,
    ..b.fields.map(field => block(width: 100%, stroke: (top: 0.6pt + ink), inset: (top: 0.4em), small(field)))))

#let render(b, close) = {
  if b.at("isDense", default: false) and b.kind != "table" { set text(size: 9pt); set par(leading: 0.5em); set list(spacing: 0.5em); render((..b, isDense: false), close) }
  else if b.kind == "paragraph" { par(b.text) }
  else if b.kind == "list" { list(..b.items.map(item => [#item])) }
  else if b.kind == "facts" { block(width: 100%, breakable: b.rows.len() > 14, facts(b, close)) }
  else if b.kind == "table" { if b.rows.len() > 9 or b.at("isDense", default: false) { render-table(b, close) } else { block(width: 100%, breakable: false, render-table(b, close)) } }
  else if b.kind == "figure" { picture(b) }
  else if b.kind == "photograph" { photograph(b) }
  else if b.kind == "callout" { callout(b) }
  else if b.kind == "cards" { cards(b) }
  else if b.kind == "signature" { signature(b) }
}

#let letterhead-block = {
  let lines = (doc.letterhead.name,) + doc.letterhead.lines
  let shown = lines.filter(said => said != "")
  if shown.len() > 0 or doc.logo != "" {
    block(width: 100%, below: if report { 0.8em } else { 1.6em }, grid(columns: (auto, 1fr), column-gutter: 1em, align: horizon,
      if doc.logo != "" { image(doc.logo, height: 14mm, width: 50mm, fit: "contain", alt: doc.letterhead.logo) },
      align(right, text(size: 8pt, fill: grey, shown.join(linebreak())))))
  }
}

#foot.update((line: doc.foot, page: doc.words.page, of: doc.words.of))
#if doc.kind != "sheets" {
  letterhead-block
  title(doc.title)
  block(below: if report { 0.7em } else { 1em }, text(size: 1.1em, doc.subtitle))
}

#let set-close(body) = {
  set text(size: 8.4pt)
  set par(leading: 0.52em, spacing: 0.6em)
  set table(inset: (x: 0.4em, top: 0.28em, bottom: 0.32em))
  set list(spacing: 0.45em)
  show figure.where(kind: table): it => block(width: 100%, above: 0.5em, below: 0.6em, align(left, it.body))
  show figure.where(kind: image): it => block(above: 0.6em, below: 0.6em, it.body + align(left, text(weight: "bold", size: 0.95em, it.caption.body)))
  show heading.where(level: 1): it => block(width: 100%, above: 0.95em, below: 0.5em, sticky: true, stroke: (bottom: 0.6pt + ink), inset: (bottom: 0.25em), text(size: 10pt, weight: "bold", it.body))
  body
}

#for (index, section) in doc.sections.enumerate() {
  if section.layout == "sheet" {
    for b in section.blocks {
      page(width: b.widthMm * 1mm, height: b.heightMm * 1mm, margin: 0mm, footer: none,
        image(bytes(b.svg), format: "svg", width: b.widthMm * 1mm, height: b.heightMm * 1mm, alt: b.alt))
    }
  } else if section.layout == "template" {
    page(margin: 12mm, footer: none, {
      show heading: it => block(height: 9mm, above: 0pt, below: 0pt, text(size: 11pt, weight: "bold", it.body))
      heading(level: 1, section.title)
      v(4mm, weak: false)
      for b in section.blocks { image(bytes(b.svg), format: "svg", width: b.widthMm * 1mm, height: b.heightMm * 1mm, alt: b.alt) }
    })
  } else {
    if section.layout == "task" and index > 0 and not section.at("sharesSheet", default: false) { pagebreak(weak: true) }
    if section.layout == "flow" and index > 0 and doc.sections.at(index - 1).layout == "body" { pagebreak(weak: true) }
    let is-close = section.layout == "body"
    let signed = section.blocks.any(b => b.kind == "signature") and section.layout != "task"
    let body = {
      heading(level: section.level, section.title)
      for (at, b) in section.blocks.enumerate() {
        let leads = b.kind == "paragraph" and at + 1 < section.blocks.len() and section.blocks.at(at + 1).kind != "paragraph"
        if leads { block(sticky: true, render(b, is-close)) } else { render(b, is-close) }
      }
    }
    let placed = if signed { block(breakable: false, width: 100%, above: if is-close { 0.95em } else { 1.9em }, body) } else { body }
    if is-close { set-close(placed) } else { placed }
  }
}
`;
