// Written from the contract by types.mjs; not edited by hand.
export type paths = Record<string, never>;
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        AccessPanelAnswer: {
            id: string;
            serviceId: string;
            bulkheadId?: string;
            at: components["schemas"]["Place"];
            /** Format: double */
            size: number;
        };
        AccessRequest: {
            passages?: components["schemas"]["PassageRequest"][];
            turn?: components["schemas"]["TurnRequest"];
            window?: components["schemas"]["PassageRequest"];
        };
        AlternativeAnswer: {
            code: string;
            text: string;
            params: {
                [key: string]: string;
            };
            of: string[];
            /** Format: double */
            saving?: number;
        };
        AssumedAnswer: {
            pointer: string;
            value: string;
            text: string;
        };
        BackingAnswer: {
            memberId: string;
            kind: string;
            of: string[];
        };
        BattRequest: {
            id?: string;
            thickness: components["schemas"]["Length"];
            width: components["schemas"]["Length"];
            length: components["schemas"]["Length"];
            /** Format: double */
            r?: number;
            splittable?: boolean;
            /** Format: int32 */
            packSize?: number;
            /** Format: double */
            packPrice?: number;
        };
        BayAnswer: {
            id: string;
            /** Format: double */
            from: number;
            /** Format: double */
            to: number;
            /** Format: double */
            width: number;
            widthText: string;
            /** Format: double */
            alongFrom?: number;
            /** Format: double */
            alongTo?: number;
            /** Format: double */
            runDegrees?: number;
        };
        /** @enum {string} */
        BaysWord: "all" | "region";
        BevelAnswer: {
            /** Format: double */
            degrees: number;
            /** Format: double */
            longPoint: number;
            longPointText: string;
            longEdge: string;
        };
        BevelsAnswer: {
            start?: components["schemas"]["BevelAnswer"];
            end?: components["schemas"]["BevelAnswer"];
        };
        /** @enum {string} */
        BoardFinishWord: "painted" | "textured";
        BoardJointAnswer: {
            kind: string;
            pieceA: string;
            pieceB: string;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            length: number;
        };
        BoardPieceAnswer: {
            id: string;
            course: string;
            /** Format: int32 */
            layer: number;
            outline: components["schemas"]["Place"][];
            /** Format: double */
            width: number;
            widthText: string;
            /** Format: double */
            length: number;
            lengthText: string;
            /** Format: double */
            area: number;
            stockId: string;
            ends: components["schemas"]["ButtEndAnswer"][];
            cutouts: components["schemas"]["CutoutAnswer"][];
            measureInPlace?: boolean;
            notes: components["schemas"]["SentenceAnswer"][];
            /** Format: int32 */
            screws: number;
        };
        /** @enum {string} */
        BoardWord: "regular" | "lightweight" | "ceiling-board" | "type-x";
        BoxRequest: {
            width: components["schemas"]["Length"];
            length: components["schemas"]["Length"];
            height: components["schemas"]["Length"];
        };
        BulkheadAnswer: {
            id: string;
            footprint: components["schemas"]["Place"][];
            parts: components["schemas"]["Place"][][][];
            /** Format: double */
            drop: number;
            dropText: string;
            /** Format: double */
            top: number;
            /** Format: double */
            frameBottom: number;
            /** Format: double */
            underside: number;
            /** Format: double */
            undersideHeight?: number;
            boardedAbove: boolean;
            joins: string[];
            members: components["schemas"]["BulkheadMemberAnswer"][];
            boards: components["schemas"]["BulkheadBoardAnswer"][];
            beads: components["schemas"]["TrimAnswer"][];
            /** Format: double */
            beadLength: number;
            insideCorners: components["schemas"]["TrimAnswer"][];
            /** Format: double */
            insideCornerLength: number;
            backing: components["schemas"]["BackingAnswer"][];
            fireblocking: components["schemas"]["TrimAnswer"][];
        };
        BulkheadBoardAnswer: {
            id: string;
            face: string;
            outline: components["schemas"]["Place"][];
            /** Format: double */
            width: number;
            /** Format: double */
            length: number;
            /** Format: double */
            area: number;
            stockId: string;
            /** Format: int32 */
            screws: number;
            cutouts: components["schemas"]["CutoutAnswer"][];
        };
        BulkheadMemberAnswer: {
            id: string;
            role: string;
            size: string;
            /** Format: double */
            length: number;
            /** Format: double */
            cutLength: number;
            cutLengthText: string;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            top: number;
            /** Format: double */
            bottom: number;
            stockId: string;
        };
        BulkheadRequest: {
            id?: string;
            edges?: number[];
            hides?: string[];
            outline?: components["schemas"]["Point"][];
            width?: components["schemas"]["Length"];
            drop?: components["schemas"]["Length"];
            frame?: components["schemas"]["FrameRequest"];
            boardedAbove?: boolean;
        };
        ButtEndAnswer: {
            /** Format: double */
            at: number;
            atText: string;
            /** Format: double */
            from: number;
            /** Format: double */
            to: number;
            backing: string[];
        };
        CableAnswer: {
            order: string[];
            /** Format: double */
            onPlan: number;
            /** Format: double */
            withSlack: number;
            withSlackText: string;
        };
        CautionAnswer: {
            code: string;
            text: string;
            params: {
                [key: string]: string;
            };
            source: components["schemas"]["SourceAnswer"];
            where: string[];
        };
        CheckAnswer: {
            rule: string;
            source: components["schemas"]["SourceAnswer"];
            status: string;
            comparison: string;
            /** Format: double */
            value?: number;
            /** Format: double */
            limit?: number;
            unit?: string;
            where: string[];
            missing?: string[];
            note?: components["schemas"]["SentenceAnswer"];
            remedy?: components["schemas"]["SentenceAnswer"];
        };
        ClearancesAnswer: {
            /** Format: double */
            strap?: number;
            /** Format: double */
            joist?: number;
            /** Format: double */
            service?: number;
            /** Format: double */
            seam?: number;
            /** Format: double */
            wall?: number;
        };
        CourseAnswer: {
            id: string;
            /** Format: int32 */
            layer: number;
            /** Format: double */
            from: number;
            /** Format: double */
            to: number;
        };
        CrewRequest: {
            /** Format: int32 */
            people?: number;
            lift?: boolean;
            /** Format: double */
            massLimit?: number;
        };
        CrossingAnswer: {
            rowId: string;
            supportId: string;
            at: components["schemas"]["Place"];
            kind: string;
            /** Format: int32 */
            fasteners: number;
        };
        CullsRequest: {
            /** Format: double */
            boards?: number;
            /** Format: double */
            dimension?: number;
        };
        CutAnswer: {
            pieceId: string;
            /** Format: double */
            length: number;
            lengthText: string;
        };
        CutPlanAnswer: {
            stock: components["schemas"]["StickAnswer"][];
            sheetStock: components["schemas"]["CutSheetAnswer"][];
            /** Format: double */
            kerf: number;
            /** Format: double */
            endTrim: number;
            results: components["schemas"]["CutResultAnswer"][];
        };
        CutResultAnswer: {
            use: string;
            objective: string;
            /** Format: double */
            cost: number;
            /** Format: double */
            lowerBound: number;
            /** Format: double */
            gap: number;
            provedOptimal: boolean;
            unit: string;
        };
        CutSheetAnswer: {
            id: string;
            /** Format: double */
            width: number;
            /** Format: double */
            length: number;
            stockId: string;
            cuts: components["schemas"]["SheetCutAnswer"][];
            offcuts: components["schemas"]["OffcutAnswer"][];
        };
        CutoutAnswer: {
            fixtureId: string;
            corner: components["schemas"]["Place"];
            centre: components["schemas"]["Place"];
            size: components["schemas"]["HoleSizeAnswer"];
            markText: string;
        };
        CutoutRequest: {
            diameter?: components["schemas"]["Length"];
            width?: components["schemas"]["Length"];
            height?: components["schemas"]["Length"];
        };
        DocumentRequest: {
            id?: string;
            /** Format: date */
            issueDate?: string;
            buyer?: string;
            seller?: string;
        };
        EdgeBeadAnswer: {
            wallId: string;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            length: number;
            lengthText: string;
        };
        /** @enum {string} */
        EffortWord: "quick" | "thorough";
        ExistingRequest: {
            material?: components["schemas"]["ExistingWord"];
            thickness?: components["schemas"]["Length"];
            stays?: boolean;
        };
        /** @enum {string} */
        ExistingWord: "gypsum" | "plaster" | "wood" | "tile" | "other";
        FastenAfterAnswer: {
            supportId: string;
            of: string[];
            code: string;
            text: string;
        };
        Fault: {
            code: string;
            pointer: string;
            detail: string;
            params?: {
                [key: string]: string;
            };
        };
        FillAnswer: {
            id: string;
            bay: string;
            outline: components["schemas"]["Place"][];
            /** Format: double */
            area: number;
            /** Format: double */
            depthAvailable: number;
            depthAvailableText: string;
            /** Format: double */
            top: number;
            /** Format: double */
            bottom: number;
            /** Format: double */
            thickness: number;
            thicknessText: string;
            batt: string;
            split: boolean;
            /** Format: double */
            width: number;
            widthText: string;
            /** Format: double */
            length: number;
            lengthText: string;
            /** Format: double */
            r: number;
            /** Format: double */
            mass: number;
            /** Format: double */
            massPerArea: number;
            reasons: components["schemas"]["ReasonAnswer"][];
        };
        FindingAnswer: {
            code: string;
            text: string;
            params: {
                [key: string]: string;
            };
            pointer?: string;
            where: string[];
            remedies: components["schemas"]["SentenceAnswer"][];
        };
        /** @enum {string} */
        FireRatingWord: "45-min" | "1-h" | "1.5-h";
        FixtureAnswer: {
            id: string;
            kind: string;
            at: components["schemas"]["Place"];
            bulkheadId?: string;
            /** Format: double */
            shift: number;
            shiftText: string;
            clearances: components["schemas"]["ClearancesAnswer"];
            status: string;
            opensOldCeiling?: boolean;
            reasons: components["schemas"]["ReasonAnswer"][];
        };
        FixtureRequest: {
            id?: string;
            kind: components["schemas"]["FixtureWord"];
            at?: components["schemas"]["Point"];
            cutout: components["schemas"]["CutoutRequest"];
            bodyDepth?: components["schemas"]["Length"];
            remoteBox?: components["schemas"]["BoxRequest"];
            clipReach?: components["schemas"]["Length"];
            insulationContact?: boolean;
            maxShift?: components["schemas"]["Length"];
            edgeClearance?: components["schemas"]["Length"];
        };
        /** @enum {string} */
        FixtureWord: "slim-light" | "can-light" | "alarm" | "register" | "return" | "fan" | "speaker" | "access-door" | "box" | "sprinkler" | "other";
        FloorAnswer: {
            earnsFurredCeiling: boolean;
            needs: components["schemas"]["SentenceAnswer"][];
            joistModule?: string;
            without?: components["schemas"]["FloorSpanAnswer"];
            with?: components["schemas"]["FloorSpanAnswer"];
            spans: components["schemas"]["FloorSpanAnswer"][];
            notes: components["schemas"]["SentenceAnswer"][];
            missing?: string[];
            source: components["schemas"]["SourceAnswer"];
        };
        FloorSpanAnswer: {
            bracing: string;
            /** Format: double */
            span: number;
            spanText: string;
            source: components["schemas"]["SourceAnswer"];
        };
        FrameRequest: {
            size?: components["schemas"]["StrapSizeWord"];
            stock?: components["schemas"]["StickStockRequest"][];
        };
        /** @enum {string} */
        GradeWord: "select-structural" | "no-1" | "no-2" | "no-3";
        GridArmAnswer: {
            /** Format: int32 */
            along: number;
            /** Format: int32 */
            across: number;
            /** Format: double */
            alongSpacing: number;
            /** Format: double */
            acrossSpacing: number;
        };
        HeightRequest: {
            at?: components["schemas"]["Point"];
            floorToJoist: components["schemas"]["Length"];
        };
        HoleSizeAnswer: {
            /** Format: double */
            diameter?: number;
            /** Format: double */
            width?: number;
            /** Format: double */
            height?: number;
        };
        InsulationAnswer: {
            purpose: string;
            barriers?: components["schemas"]["SentenceAnswer"];
            fills: components["schemas"]["FillAnswer"][];
            /** Format: double */
            areaR: number;
            /** Format: double */
            framingFraction: number;
            /** Format: double */
            area: number;
            uncovered: components["schemas"]["UncoveredAnswer"][];
        };
        InsulationRequest: {
            purpose?: components["schemas"]["InsulationWord"];
            batts?: components["schemas"]["BattRequest"][];
            bays?: components["schemas"]["BaysWord"];
            region?: components["schemas"]["Point"][];
        };
        /** @enum {string} */
        InsulationWord: "sound" | "thermal" | "none";
        JointCostRequest: {
            /** Format: double */
            butt?: number;
            /** Format: double */
            tapered?: number;
        };
        /** @enum {string} */
        JointWord: "on-joist" | "side-lap" | "scab" | "block";
        JoistAnswer: {
            id: string;
            field: string;
            /** Format: double */
            at: number;
            atText: string;
            /** Format: double */
            face: number;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            support?: string;
        };
        JoistFieldRequest: {
            id?: string;
            region?: components["schemas"]["Point"][];
            run?: components["schemas"]["RunWord"];
            /** Format: double */
            runDegrees?: number;
            kind?: components["schemas"]["JoistWord"];
            size?: components["schemas"]["JoistSizeWord"];
            species?: components["schemas"]["SpeciesWord"];
            grade?: components["schemas"]["GradeWord"];
            clearSpan?: components["schemas"]["Length"];
            bridging?: boolean;
            depth?: components["schemas"]["Length"];
            face?: components["schemas"]["Length"];
            spacing?: components["schemas"]["Length"];
            first?: components["schemas"]["Length"];
            positions?: components["schemas"]["Length"][];
            undersides?: components["schemas"]["UndersideRequest"][];
        };
        /** @enum {string} */
        JoistSizeWord: "2x4" | "2x6" | "2x8" | "2x10" | "2x12";
        /** @enum {string} */
        JoistWord: "sawn" | "i-joist" | "open-web-truss" | "steel";
        JoistsAnswer: {
            members: components["schemas"]["JoistAnswer"][];
            bays: components["schemas"]["BayAnswer"][];
            breaks?: components["schemas"]["RunBreakAnswer"][];
        };
        LabourRequest: {
            /** Format: double */
            hourPrice: number;
            /** Format: double */
            perStrapPiece?: number;
            /** Format: double */
            perBoardPiece?: number;
            /** Format: double */
            perJointLength?: number;
        };
        Length: number | string;
        LightGridAnswer: {
            fixtures: string[];
            /** Format: int32 */
            asked: number;
            /** Format: int32 */
            needed?: number;
            /** Format: double */
            lux?: number;
            /** Format: double */
            area: number;
            /** Format: double */
            roomIndex?: number;
            /** Format: double */
            mountingHeight?: number;
            /** Format: double */
            spacing: number;
            spacingText: string;
            /** Format: double */
            spacingToHeight?: number;
            /** Format: double */
            spacingToHeightLimit?: number;
            /** Format: double */
            departure: number;
            arms: components["schemas"]["GridArmAnswer"][];
            cable: components["schemas"]["CableAnswer"];
        };
        LightGridRequest: {
            /** Format: int32 */
            count?: number;
            /** Format: int32 */
            rows?: number;
            /** Format: int32 */
            columns?: number;
            /** Format: double */
            lux?: number;
            /** Format: double */
            lumens?: number;
            workHeight?: components["schemas"]["Length"];
            /** Format: double */
            utilisation?: number;
            /** Format: double */
            maintenance?: number;
            /** Format: double */
            spacingToHeight?: number;
            fixture: components["schemas"]["FixtureRequest"];
        };
        MarkAnswer: {
            end: string;
            at: components["schemas"]["Place"];
            /** Format: double */
            nearEdge: number;
            nearEdgeText: string;
            side: string;
        };
        MethodAnswer: {
            method: string;
            planned: boolean;
            /** Format: double */
            finishedHeight?: number;
            finishedHeightText?: string;
            /** Format: int32 */
            strapPieces?: number;
            /** Format: double */
            buttJointLength?: number;
            /** Format: double */
            cost?: number;
            /** Format: double */
            strapCost?: number;
            checks: components["schemas"]["CheckAnswer"][];
            sound: components["schemas"]["SentenceAnswer"];
            notes: components["schemas"]["SentenceAnswer"][];
        };
        MountAnswer: {
            id: string;
            at: components["schemas"]["Place"];
            /** Format: double */
            mass: number;
            hangsFrom: string[];
            said: components["schemas"]["SentenceAnswer"];
        };
        MountRequest: {
            id?: string;
            at: components["schemas"]["Point"];
            /** Format: double */
            mass: number;
        };
        NailerAnswer: {
            id: string;
            role: string;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            length: number;
            lengthText: string;
            /** Format: double */
            cutLength: number;
            cutLengthText: string;
            stockId: string;
            reasons: components["schemas"]["ReasonAnswer"][];
        };
        NeighbourRequest: {
            use?: components["schemas"]["NeighbourWord"];
            heated?: boolean;
        };
        /** @enum {string} */
        NeighbourWord: "living" | "attic" | "garage" | "crawl-space" | "outside" | "other";
        OffcutAnswer: {
            /** Format: double */
            x: number;
            /** Format: double */
            y: number;
            /** Format: double */
            width: number;
            /** Format: double */
            length: number;
        };
        OpeningRequest: {
            id?: string;
            kind?: components["schemas"]["OpeningWord"];
            outline: components["schemas"]["Point"][];
            clearance?: components["schemas"]["Length"];
            headroom?: components["schemas"]["Length"];
        };
        /** @enum {string} */
        OpeningWord: "post" | "chimney" | "stair" | "other" | "well";
        /** @enum {string} */
        OutlineFaceWord: "framing" | "finished";
        PackAnswer: {
            id?: string;
            sku?: string;
            /** Format: double */
            packSize: number;
            /** Format: int64 */
            count: number;
            /** Format: double */
            packPrice?: number;
        };
        PartitionAnswer: {
            id: string;
            top: string;
            rated: boolean;
            outlines: components["schemas"]["Place"][][];
            rows: string[];
            blocking: string[];
            notes: components["schemas"]["SentenceAnswer"][];
        };
        PartitionRequest: {
            id?: string;
            line: components["schemas"]["Point"][];
            thickness: components["schemas"]["Length"];
            top?: components["schemas"]["PartitionTopWord"];
            rated?: boolean;
        };
        /** @enum {string} */
        PartitionTopWord: "joists" | "straps" | "board";
        PassageRequest: {
            width: components["schemas"]["Length"];
            height: components["schemas"]["Length"];
        };
        PieceAnswer: {
            id: string;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            length: number;
            lengthText: string;
            /** Format: double */
            cutLength: number;
            cutLengthText: string;
            stockId: string;
            startJoint: string;
            endJoint: string;
            bevel?: components["schemas"]["BevelsAnswer"];
            fastenAfter?: components["schemas"]["FastenAfterAnswer"][];
        };
        Place: number[];
        PlanAnswer: {
            reference?: string;
            units: components["schemas"]["UnitsWord"];
            ruleset: string;
            engineVersion: string;
            rulesVersion: string;
            requestDigest: string;
            digest: string;
            assumed: components["schemas"]["AssumedAnswer"][];
            summary: components["schemas"]["SummaryAnswer"];
            checks?: components["schemas"]["CheckAnswer"][];
            cautions?: components["schemas"]["CautionAnswer"][];
            floor?: components["schemas"]["FloorAnswer"];
            walls?: components["schemas"]["WallAnswer"][];
            partitions?: components["schemas"]["PartitionAnswer"][];
            joists?: components["schemas"]["JoistsAnswer"];
            strapping?: components["schemas"]["StrappingAnswer"];
            sheets?: components["schemas"]["SheetsAnswer"];
            fixtures?: components["schemas"]["FixtureAnswer"][];
            lightGrid?: components["schemas"]["LightGridAnswer"];
            mounts?: components["schemas"]["MountAnswer"][];
            bulkheads?: components["schemas"]["BulkheadAnswer"][];
            accessPanels?: components["schemas"]["AccessPanelAnswer"][];
            insulation?: components["schemas"]["InsulationAnswer"];
            cutPlan?: components["schemas"]["CutPlanAnswer"];
            takeoff?: components["schemas"]["TakeoffAnswer"];
            steps?: components["schemas"]["StepAnswer"][];
            alternatives?: components["schemas"]["AlternativeAnswer"][];
            methods?: components["schemas"]["MethodAnswer"][];
            slack?: components["schemas"]["SlackAnswer"][];
            drawing?: string;
        };
        PlanRequest: {
            reference?: string;
            units: components["schemas"]["UnitsWord"];
            ruleset?: components["schemas"]["RulesetWord"];
            rules?: components["schemas"]["RuleRequest"][];
            language?: string;
            effort?: components["schemas"]["EffortWord"];
            room: components["schemas"]["RoomRequest"];
            joistFields: components["schemas"]["JoistFieldRequest"][];
            strapping?: components["schemas"]["StrappingRequest"];
            sheets?: components["schemas"]["SheetsRequest"];
            access?: components["schemas"]["AccessRequest"];
            crew?: components["schemas"]["CrewRequest"];
            fixtures?: components["schemas"]["FixtureRequest"][];
            lightGrid?: components["schemas"]["LightGridRequest"];
            mounts?: components["schemas"]["MountRequest"][];
            services?: components["schemas"]["ServiceRequest"][];
            partitions?: components["schemas"]["PartitionRequest"][];
            bulkheads?: components["schemas"]["BulkheadRequest"][];
            insulation?: components["schemas"]["InsulationRequest"];
            prices?: components["schemas"]["PricesRequest"];
            document?: components["schemas"]["DocumentRequest"];
        };
        Point: components["schemas"]["Length"][];
        PricedItemRequest: {
            code: string;
            id?: string;
            sku?: string;
            /** Format: double */
            packSize?: number;
            /** Format: double */
            packPrice: number;
        };
        PricesRequest: {
            currency?: string;
            items?: components["schemas"]["PricedItemRequest"][];
            waste?: components["schemas"]["WasteRequest"];
            tax?: components["schemas"]["TaxRequest"][];
            culls?: components["schemas"]["CullsRequest"];
            labour?: components["schemas"]["LabourRequest"];
        };
        Problem: {
            type: string;
            title: string;
            /** Format: int32 */
            status: number;
            detail: string;
            instance: string;
            requestId: string;
            errors?: components["schemas"]["Fault"][];
            findings?: components["schemas"]["FindingAnswer"][];
        };
        ReasonAnswer: {
            kind: string;
            of: string[];
            code?: string;
            text?: string;
        };
        RoomRequest: {
            outline: components["schemas"]["Point"][];
            outlineFace?: components["schemas"]["OutlineFaceWord"];
            openings?: components["schemas"]["OpeningRequest"][];
            heights?: components["schemas"]["HeightRequest"][];
            floorBuildUp?: components["schemas"]["Length"];
            walls?: components["schemas"]["WallRequest"][];
            existing?: components["schemas"]["ExistingRequest"];
            above?: components["schemas"]["NeighbourRequest"];
            below?: components["schemas"]["NeighbourRequest"];
            use?: components["schemas"]["RoomUseWord"];
            existingBuilding?: boolean;
            secondarySuite?: boolean;
        };
        /** @enum {string} */
        RoomUseWord: "habitable" | "bedroom" | "hallway" | "bathroom" | "laundry" | "basement" | "unfinished-basement";
        RowAnswer: {
            id: string;
            /** Format: double */
            at: number;
            atText: string;
            short?: boolean;
            marks: components["schemas"]["MarkAnswer"][];
            /** Format: double */
            spacingBefore?: number;
            spacingBeforeText?: string;
            reasons: components["schemas"]["ReasonAnswer"][];
            pieces: components["schemas"]["PieceAnswer"][];
        };
        RuleRequest: {
            id: string;
            /** Format: double */
            value: number;
        };
        /** @enum {string} */
        RulesetWord: "us-irc-2021" | "us-irc-2024" | "ca-nbc-2020" | "ca-on-2024";
        RunBreakAnswer: {
            id: string;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            length: number;
            lengthText: string;
            fields: string[];
        };
        /** @enum {string} */
        RunWord: "x" | "y";
        ScabAnswer: {
            id: string;
            rowId: string;
            at: components["schemas"]["Place"];
            /** Format: double */
            length: number;
            lengthText: string;
            stockId: string;
        };
        SentenceAnswer: {
            code: string;
            text: string;
            params: {
                [key: string]: string;
            };
        };
        ServiceRequest: {
            id?: string;
            kind: components["schemas"]["ServiceWord"];
            path?: components["schemas"]["Point"][];
            width?: components["schemas"]["Length"];
            outline?: components["schemas"]["Point"][];
            top?: components["schemas"]["Length"];
            bottom?: components["schemas"]["Length"];
            clearance?: components["schemas"]["Length"];
            hot?: boolean;
            needsReach?: boolean;
        };
        /** @enum {string} */
        ServiceWord: "duct" | "panned-return" | "pipe" | "drain" | "beam" | "cable" | "box" | "valve" | "gas-valve" | "damper" | "cleanout" | "other";
        SheetCutAnswer: {
            pieceId: string;
            /** Format: double */
            x: number;
            /** Format: double */
            y: number;
            /** Format: double */
            width: number;
            /** Format: double */
            length: number;
            widthText: string;
            lengthText: string;
            turned: boolean;
        };
        SheetStockRequest: {
            id?: string;
            width: components["schemas"]["Length"];
            length: components["schemas"]["Length"];
            sku?: string;
            /** Format: int32 */
            packSize?: number;
            /** Format: double */
            packPrice?: number;
            /** Format: int32 */
            quantity?: number;
        };
        SheetsAnswer: {
            courses: components["schemas"]["CourseAnswer"][];
            pieces: components["schemas"]["BoardPieceAnswer"][];
            joints: components["schemas"]["BoardJointAnswer"][];
            /** Format: double */
            buttJointLength: number;
            /** Format: double */
            taperedJointLength: number;
            /** Format: double */
            cutEdgeJointLength: number;
            /** Format: double */
            controlJointLength?: number;
            /** Format: double */
            perimeterLength: number;
            startWalls: string[];
            wellBeads?: components["schemas"]["WellBeadAnswer"][];
            edgeBeads?: components["schemas"]["EdgeBeadAnswer"][];
        };
        SheetsRequest: {
            type?: components["schemas"]["BoardWord"];
            thickness?: components["schemas"]["Length"];
            /** Format: int32 */
            layers?: number;
            finish?: components["schemas"]["BoardFinishWord"];
            fireRating?: components["schemas"]["FireRatingWord"];
            stock?: components["schemas"]["SheetStockRequest"][];
            cutAllowance?: components["schemas"]["Length"];
            minStagger?: components["schemas"]["Length"];
            jointCost?: components["schemas"]["JointCostRequest"];
        };
        ShimAnswer: {
            rowId: string;
            supportId: string;
            at: components["schemas"]["Place"];
            /** Format: double */
            gap: number;
            /** Format: double */
            thickness: number;
            thicknessText: string;
            /** Format: int32 */
            count: number;
        };
        SlackAnswer: {
            rowId: string;
            /** Format: double */
            towardsLow: number;
            towardsLowText: string;
            heldLow: string;
            /** Format: double */
            towardsHigh: number;
            towardsHighText: string;
            heldHigh: string;
        };
        SourceAnswer: {
            document: string;
            edition?: string;
            clause?: string;
            publisher?: string;
            basis: string;
            confidence: string;
            note?: string;
        };
        SpacerAnswer: {
            /** Format: double */
            length: number;
            lengthText: string;
            between: string[];
        };
        /** @enum {string} */
        SpeciesWord: "d-fir-l" | "hem-fir" | "s-p-f" | "northern";
        StepAnswer: {
            id: string;
            text: string;
            code: string;
            params: {
                [key: string]: string;
            };
            touches: components["schemas"]["TouchAnswer"][];
            hold?: boolean;
        };
        StickAnswer: {
            id: string;
            size?: string;
            /** Format: double */
            length: number;
            lengthText: string;
            stockId: string;
            cuts: components["schemas"]["CutAnswer"][];
            /** Format: double */
            offcut: number;
            offcutText: string;
        };
        StickStockRequest: {
            id?: string;
            length: components["schemas"]["Length"];
            sku?: string;
            /** Format: int32 */
            packSize?: number;
            /** Format: double */
            packPrice?: number;
            /** Format: int32 */
            quantity?: number;
        };
        StrapPlaneAnswer: {
            /** Format: double */
            level: number;
            rowId: string;
            supportId: string;
            at: components["schemas"]["Place"];
            /** Format: double */
            stepFound: number;
            /** Format: double */
            stepLeft: number;
            stepRows: string[];
            /** Format: int32 */
            estimated: number;
        };
        StrapSizeRequest: {
            name?: components["schemas"]["StrapSizeWord"];
            thickness?: components["schemas"]["Length"];
            face?: components["schemas"]["Length"];
        };
        /** @enum {string} */
        StrapSizeWord: "1x2" | "1x3" | "1x4" | "2x2" | "2x3" | "2x4";
        StrappingAnswer: {
            method?: string;
            rows: components["schemas"]["RowAnswer"][];
            nailers: components["schemas"]["NailerAnswer"][];
            plane?: components["schemas"]["StrapPlaneAnswer"];
            shims: components["schemas"]["ShimAnswer"][];
            spacers: components["schemas"]["SpacerAnswer"][];
            crossings: components["schemas"]["CrossingAnswer"][];
            scabs: components["schemas"]["ScabAnswer"][];
            fastening: components["schemas"]["SentenceAnswer"][];
            /** Format: double */
            widestSpacing: number;
            widestSpacingText: string;
            widestSpacingRows: string[];
        };
        /** @enum {string} */
        StrappingMethodWord: "strapped" | "direct";
        StrappingRequest: {
            method?: components["schemas"]["StrappingMethodWord"];
            size?: components["schemas"]["StrapSizeRequest"];
            maxSpacing?: components["schemas"]["Length"];
            jointsAllowed?: components["schemas"]["JointWord"][];
            minPiece?: components["schemas"]["Length"];
            stock?: components["schemas"]["StickStockRequest"][];
            kerf?: components["schemas"]["Length"];
            endTrim?: components["schemas"]["Length"];
            endClearance?: components["schemas"]["Length"];
            longestHandled?: components["schemas"]["Length"];
        };
        SummaryAnswer: {
            /** Format: int32 */
            rows: number;
            /** Format: int32 */
            strapPieces: number;
            /** Format: int32 */
            lengthsToBuy: number;
            /** Format: int32 */
            sheetsToBuy: number;
            /** Format: double */
            buttJointLength: number;
            buttJointLengthText: string;
            /** Format: double */
            finishedHeight?: number;
            finishedHeightText?: string;
            /** Format: double */
            lowestUnderside?: number;
            lowestUndersideText?: string;
            /** Format: int32 */
            fixturesMoved: number;
            /** Format: int32 */
            fixturesInConflict: number;
            /** Format: double */
            mass: number;
            /** Format: double */
            heaviestLift: number;
            /** Format: double */
            cost?: number;
            currency?: string;
            /** Format: int32 */
            checksFailed: number;
        };
        TakeoffAnswer: {
            lines: components["schemas"]["TakeoffLineAnswer"][];
            totals: components["schemas"]["TakeoffTotalsAnswer"];
        };
        TakeoffLineAnswer: {
            code: string;
            description: string;
            id?: string;
            unit: string;
            unitCode: string;
            /** Format: double */
            counted: number;
            /** Format: double */
            waste: number;
            /** Format: double */
            quantity: number;
            packs: components["schemas"]["PackAnswer"][];
            /** Format: double */
            amount?: number;
            /** Format: double */
            mass?: number;
            countedFrom: string;
        };
        TakeoffTotalsAnswer: {
            currency?: string;
            /** Format: double */
            amount?: number;
            /** Format: double */
            mass: number;
            unpriced: string[];
            taxes?: components["schemas"]["TaxAnswer"][];
            /** Format: double */
            withTax?: number;
        };
        TaxAnswer: {
            name: string;
            /** Format: double */
            rate: number;
            /** Format: double */
            base: number;
            /** Format: double */
            amount: number;
        };
        TaxRequest: {
            name: string;
            /** Format: double */
            rate: number;
            onLabour?: boolean;
        };
        TouchAnswer: {
            kind: string;
            id: string;
        };
        TrimAnswer: {
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            length: number;
            upright: boolean;
        };
        TurnRequest: {
            widthBefore: components["schemas"]["Length"];
            widthAfter: components["schemas"]["Length"];
            height?: components["schemas"]["Length"];
        };
        UncoveredAnswer: {
            bay: string;
            outline: components["schemas"]["Place"][];
            /** Format: double */
            area: number;
            reasons: components["schemas"]["ReasonAnswer"][];
        };
        UndersideRequest: {
            at: components["schemas"]["Point"];
            level: components["schemas"]["Length"];
        };
        /** @enum {string} */
        UnitsWord: "imperial" | "metric";
        WallAnswer: {
            id: string;
            /** Format: int32 */
            edge: number;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            length: number;
            lengthText: string;
            kind?: string;
        };
        WallRequest: {
            /** Format: int32 */
            edge: number;
            kind: components["schemas"]["WallWord"];
        };
        /** @enum {string} */
        WallWord: "concrete" | "stud" | "later" | "open";
        WasteRequest: {
            /** Format: double */
            fasteners?: number;
            /** Format: double */
            tape?: number;
            /** Format: double */
            compound?: number;
            /** Format: double */
            adhesive?: number;
        };
        WellBeadAnswer: {
            openingId: string;
            from: components["schemas"]["Place"];
            to: components["schemas"]["Place"];
            /** Format: double */
            length: number;
            lengthText: string;
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export type operations = Record<string, never>;
